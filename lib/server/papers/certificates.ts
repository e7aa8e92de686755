import 'server-only';
import { authorityOfFingerprint, currentAuthority } from '@/lib/db/signing/certificates';
import { schoolScope } from '@/lib/db/scope';
import { certificatePem } from '@/lib/pdf/certificates/pem';
import type { Actor } from '../actor';
import { database } from '../database';

export interface SchoolCertificate { readonly fingerprint: string; readonly validFrom: Date; readonly validUntil: Date }

/** The certificate by which the actor's school vouches for its people; null before the first paper was signed. */
export async function schoolCertificate(actor: Actor): Promise<SchoolCertificate | null> {
  const authority = await currentAuthority(database(), schoolScope(actor));
  return authority === null ? null : { fingerprint: authority.fingerprint, validFrom: authority.validFrom, validUntil: authority.validUntil };
}

export interface CertificateFile { readonly name: string; readonly type: string; readonly bytes: Uint8Array }

/**
 * A school's certificate as a file, by "fingerprint.pem" or "fingerprint.der"; null when there is none. Anybody may
 * have it: it holds no secret, and with it any program can check our papers.
 */
export async function certificateFile(name: string): Promise<CertificateFile | null> {
  const [, fingerprint, form] = /^([0-9a-f]{64})\.(pem|der)$/.exec(name) ?? [];
  if (fingerprint === undefined) return null;
  const found = await authorityOfFingerprint(database(), fingerprint);
  if (found === null) return null;
  const file = `school-certificate-${fingerprint.slice(0, 8)}.${form === 'pem' ? 'pem' : 'der'}`;
  return form === 'pem' ? { name: file, type: 'application/x-pem-file', bytes: new TextEncoder().encode(certificatePem(found.certificate)) } : { name: file, type: 'application/pkix-cert', bytes: found.certificate };
}
