import 'server-only';
import { signerDetails } from '@/lib/db/assessments/paper-material';
import type { MadeSignature } from '@/lib/db/documents/keep-document';
import { schoolScope } from '@/lib/db/scope';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';
import { signPaper } from './paper-desk';
import { type ReadySigner, signerFor } from './signing-keys';

/** Somebody whose key is open, and how they stand on a paper. */
export interface ReadyToSign {
  readonly personId: string;
  readonly name: string;
  readonly post: string;
  readonly employer: string;
  readonly school: { readonly name: string; readonly locale: string; readonly timeZone: string };
  readonly key: ReadySigner;
}

/** Opens the actor's key by their password, which the caller has asked for just now and found right. */
export async function readyToSign(actor: Actor, password: string, now: Date): Promise<ReadyToSign> {
  const [me, school] = [await signerDetails(database(), schoolScope(actor), actor.personId), await currentSchool(actor)];
  if (me === null) throw new Error('whoever signs is not of the school');
  const { name, post, employer } = me;
  return { personId: actor.personId, name, post, employer, school: { name: school.schoolName, locale: school.locale, timeZone: school.timeZone }, key: await signerFor(actor, password, now) };
}

/** How a paper is printed, as far as the look of a signature depends on it. */
export interface PrintedAs { readonly format: 'A4' | 'LETTER'; readonly language: string }

/**
 * Signs a file in one of its places. It touches neither database nor request, so that it can follow on a making.
 * @param reason as it stands in the signature, such as "Checked, and agreed to"
 */
export async function signAs(ready: ReadyToSign, pdf: Uint8Array, { format, language }: PrintedAs, place: 'Preparer' | 'Officer', reason: string, at: Date): Promise<{ readonly bytes: Uint8Array; readonly signature: MadeSignature }> {
  const { name, post, employer, school, key } = ready;
  const bytes = await signPaper(pdf, place, { name, post: [post, employer].filter((part) => part !== '').join(', '), reason, place: school.name, at, when: momentWords(at, school), language, format }, key);
  return { bytes, signature: { part: place === 'Preparer' ? 'preparer' : 'officer', signerId: ready.personId, signerName: name, signerPost: post, certificateId: key.certificateId, certificateFingerprint: key.fingerprint } };
}

/** The format of a stored paper, as it is printed. */
export const printedFormat = (stored: string): PrintedAs['format'] => (stored === 'A4' ? 'A4' : 'LETTER');
