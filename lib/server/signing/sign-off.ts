import 'server-only';
import { can } from '@/lib/access/can';
import type { SignOffInput } from '@/lib/assessments/signing-input';
import { signAsOfficer } from '@/lib/assessments/lifecycle';
import { signOff as write, type SignOff } from '@/lib/db/assessments/officer-acts';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { type Outcome, overtaken, refused } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { printedFormat, readyToSign, signAs } from '../papers/sign-as';
import { type VersionInFull, versionInFull } from './material';
import { extremeRisks, openStops } from './open-stops';

/**
 * The officer signs the very file that the preparer signed, which puts the assessment in force. What is signed is
 * named by its id: a paper that was made anew meanwhile is not signed by mistake.
 */
export async function signOff(actor: Actor, input: SignOffInput): Promise<Outcome> {
  const found = await versionInFull(actor, input.versionId);
  if (found === null) return refused(null, 'This assessment is not there');
  const { version } = found;
  if (!can(actor.role, 'assessment.sign-as-officer', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } })) return refused(null, 'You prepared it, so somebody else must check and sign it');
  if (version.scope.officerId !== actor.personId) return refused(null, 'The paper names another officer. It has to be handed over to you to be signed by you');
  const [paper, school] = await Promise.all([waitingPaperOf(database(), schoolScope(actor), { kind: 'assessment', versionId: version.id }), currentSchool(actor)]);
  if (paper === null || paper.id !== input.documentId) return overtaken('The paper has changed since you opened it. Read the new one, then sign');
  const now = new Date();
  const may = whatStandsAgainst(found, calendarDay(now, school.timeZone));
  const standing = { state: version.state, preparerId: version.preparedById, preparerSigned: true, suspended: false };
  const decision = signAsOfficer({ standing, personId: actor.personId, ...may });
  if (!decision.ok) return refused(null, decision.why);
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const done = await write(database(), actor, now, await signedOff(actor, found, paper, input.password, now));
  return done.ok ? { ok: true, then: `/assessments/${version.id}/result` } : refused(null, done.why);
}

type WaitingPaper = NonNullable<Awaited<ReturnType<typeof waitingPaperOf>>>;

/** The waiting paper with the officer's signature beside the preparer's, ready to be kept. Whether it may be signed, the caller has asked. */
export async function signedOff(actor: Actor, found: VersionInFull, paper: WaitingPaper, password: string, now: Date): Promise<SignOff> {
  const [last] = paper.revisions;
  if (last === undefined) throw new Error(`paper ${paper.number} has no file`);
  const [ready, { timeZone }] = [await readyToSign(actor, password, now), await currentSchool(actor)];
  const { bytes, signature: { certificateFingerprint, ...signature } } = await signAs(ready, new Uint8Array(last.bytes), { format: printedFormat(paper.format), language: paper.language }, 'Officer', 'Checked, and agreed to', now);
  return {
    versionId: found.version.id, revision: found.version.revision, documentId: paper.id, documentNumber: paper.number, documentRevision: paper.revision, bytes,
    signature, certificateFingerprint,
    ...whatStandsAgainst(found, calendarDay(now, timeZone)),
  };
}

function whatStandsAgainst(found: VersionInFull, today: string): Pick<SignOff, 'openStops' | 'extreme'> {
  return { openStops: openStops(found, today).map((stop) => stop.title), extreme: extremeRisks(found) };
}
