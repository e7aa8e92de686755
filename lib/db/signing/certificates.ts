import type { AuditAuthor } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';

export interface KeptKey {
  readonly id: string;
  /** X.509, DER */
  readonly certificate: Uint8Array;
  readonly fingerprint: string;
  readonly sealedKey: string;
  readonly validFrom: Date;
  readonly validUntil: Date;
}
export interface NewKey extends Omit<KeptKey, 'id'> {
  /** chosen by the caller, because the key is sealed to it */
  readonly id: string;
}

/** The certificate by which the school vouches now; null before the first paper was signed. */
export async function currentAuthority(db: Db, scope: SchoolScope): Promise<KeptKey | null> {
  const row = await db.signingAuthority.findFirst({ where: { ...scope, replacedAt: null }, orderBy: { createdAt: 'desc' } });
  return row === null ? null : kept(row);
}

/** Those of every school of this installation, with the school each is of. */
export async function allAuthorities(db: Db): Promise<readonly { readonly schoolId: string; readonly schoolName: string; readonly certificate: Uint8Array; readonly fingerprint: string }[]> {
  const rows = await db.signingAuthority.findMany({ orderBy: { createdAt: 'asc' }, select: { schoolId: true, certificate: true, fingerprintSha256: true, school: { select: { name: true } } } });
  return rows.map((row) => ({ schoolId: row.schoolId, schoolName: row.school.name, certificate: new Uint8Array(row.certificate), fingerprint: row.fingerprintSha256 }));
}

/** One of them by its fingerprint, with the school it is of: a certificate is for everybody. */
export async function authorityOfFingerprint(db: Db, fingerprint: string): Promise<{ readonly certificate: Uint8Array; readonly schoolName: string } | null> {
  const row = await db.signingAuthority.findUnique({ where: { fingerprintSha256: fingerprint }, select: { certificate: true, school: { select: { name: true } } } });
  return row === null ? null : { certificate: new Uint8Array(row.certificate), schoolName: row.school.name };
}

/** Keeps a new certificate of the school; the one before stays, for what was signed under it. */
export async function keepAuthority(db: Db, by: AuditAuthor, at: Date, key: NewKey): Promise<void> {
  const scope = schoolScope(by);
  await recordChange(db, by, at, async (tx) => {
    await tx.signingAuthority.updateMany({ where: { ...scope, replacedAt: null }, data: { replacedAt: at } });
    await tx.signingAuthority.create({ data: { ...scope, ...columns(key), createdAt: at } });
    return { value: undefined, events: [{ kind: 'authority.made', subjectId: key.id, data: { fingerprint: key.fingerprint, validUntil: key.validUntil.toISOString() } }] };
  });
}

/** The certificate a person signs with now; null when there is none or it was revoked. */
export async function currentPersonKey(db: Db, scope: SchoolScope, personId: string): Promise<(KeptKey & { readonly authorityId: string }) | null> {
  const row = await db.personCertificate.findFirst({ where: { ...scope, personId, revokedAt: null }, orderBy: { createdAt: 'desc' } });
  return row === null ? null : { ...kept(row), authorityId: row.authorityId };
}

/** Keeps a new certificate of a person and revokes the one before it, so that there is one to sign with. */
export async function keepPersonKey(db: Db, by: AuditAuthor, at: Date, person: { readonly personId: string; readonly authorityId: string }, key: NewKey): Promise<void> {
  const scope = schoolScope(by);
  await recordChange(db, by, at, async (tx) => {
    await tx.personCertificate.updateMany({ where: { ...scope, personId: person.personId, revokedAt: null }, data: { revokedAt: at, revokedReason: 'a newer one took its place' } });
    await tx.personCertificate.create({ data: { ...scope, ...person, ...columns(key), createdAt: at } });
    return { value: undefined, events: [{ kind: 'certificate.issued', subjectId: key.id, data: { personId: person.personId, fingerprint: key.fingerprint, validUntil: key.validUntil.toISOString() } }] };
  });
}

interface KeyRow { readonly id: string; readonly certificate: Uint8Array; readonly fingerprintSha256: string; readonly sealedKey: string; readonly validFrom: Date; readonly validUntil: Date }

function kept({ id, certificate, fingerprintSha256, sealedKey, validFrom, validUntil }: KeyRow): KeptKey {
  return { id, certificate: new Uint8Array(certificate), fingerprint: fingerprintSha256, sealedKey, validFrom, validUntil };
}

function columns({ id, certificate, fingerprint, sealedKey, validFrom, validUntil }: NewKey) {
  return { id, certificate: Uint8Array.from(certificate), fingerprintSha256: fingerprint, sealedKey, validFrom, validUntil };
}
