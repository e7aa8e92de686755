import 'server-only';
import { randomUUID } from 'node:crypto';
import { currentAuthority, currentPersonKey, keepAuthority, keepPersonKey, type KeptKey, type NewKey } from '@/lib/db/signing/certificates';
import { schoolScope } from '@/lib/db/scope';
import { createAuthority, type KeyedCertificate } from '@/lib/pdf/certificates/authority';
import { certificateFacts } from '@/lib/pdf/certificates/certificate-facts';
import { issuePersonCertificate } from '@/lib/pdf/certificates/person-certificate';
import { openKey, type Opener, sealKey } from '@/lib/pdf/certificates/seal';
import { newSerial } from '@/lib/pdf/certificates/serial';
import { needsNewCertificate } from '@/lib/pdf/certificates/validity';
import type { Signer } from '@/lib/pdf/sign/signer';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';
import { keyFor } from '../secret';

export interface ReadySigner { readonly signer: Signer; readonly certificateId: string; readonly fingerprint: string }

/**
 * Somebody's key, opened with their password, which was asked for just now and found right. Makes the school's
 * certificate before its first paper, and a person's before their first signature, when it soon ends, or when it
 * no longer opens: a new password that was set by a link cannot open the old key.
 */
export async function signerFor(actor: Actor, password: string, now: Date): Promise<ReadySigner> {
  const authority = await authorityOf(actor, now);
  const known = await currentPersonKey(database(), schoolScope(actor), actor.personId);
  const usable = known !== null && known.authorityId === authority.id && !needsNewCertificate({ from: known.validFrom, until: known.validUntil }, now);
  const opened = usable ? await openKey(known.sealedKey, personOpener(known.id, password)) : null;
  if (usable && opened?.ok === true) return ready(known, opened.key, authority.certificate);
  const made = await issuePersonCertificate({ authority, name: actor.name, schoolName: (await currentSchool(actor)).schoolName, now, serial: newSerial() });
  const kept = await sealed(made, (id) => personOpener(id, password));
  await keepPersonKey(database(), actor, now, { personId: actor.personId, authorityId: authority.id }, kept);
  return ready(kept, made.key, authority.certificate);
}

/** The school's own certificate and key; made when there is none or it soon ends. */
async function authorityOf(actor: Actor, now: Date): Promise<KeyedCertificate & { readonly id: string }> {
  const known = await currentAuthority(database(), schoolScope(actor));
  if (known !== null && !needsNewCertificate({ from: known.validFrom, until: known.validUntil }, now)) {
    const opened = await openKey(known.sealedKey, authorityOpener(known.id));
    if (!opened.ok) throw new Error(`the school's signing key does not open (${opened.reason}): data/secret is not the one it was made with`);
    return { id: known.id, certificate: known.certificate, key: opened.key };
  }
  const made = await createAuthority({ schoolName: (await currentSchool(actor)).schoolName, now, serial: newSerial() });
  const kept = await sealed(made, authorityOpener);
  await keepAuthority(database(), actor, now, kept);
  return { id: kept.id, ...made };
}

const authorityOpener = (id: string): Opener => ({ secret: keyFor('signing-keys'), owner: `school certificate ${id}` });
const personOpener = (id: string, password: string): Opener => ({ secret: keyFor('signing-keys'), password, owner: `person certificate ${id}` });

async function sealed({ certificate, key }: KeyedCertificate, openerOf: (id: string) => Opener): Promise<NewKey> {
  const id = randomUUID();
  const facts = certificateFacts(certificate);
  return { id, certificate, fingerprint: facts.fingerprint, sealedKey: await sealKey(key, openerOf(id)), validFrom: facts.from, validUntil: facts.until };
}

function ready(kept: KeptKey | NewKey, key: Uint8Array, issuer: Uint8Array): ReadySigner {
  return { signer: { certificate: kept.certificate, issuer, key }, certificateId: kept.id, fingerprint: kept.fingerprint };
}
