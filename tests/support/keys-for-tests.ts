import type { Db } from '@/lib/db/client';
import type { Member } from '@/lib/db/people/find-member';
import { keepAuthority, keepPersonKey } from '@/lib/db/signing/certificates';

/** Stand-ins: a repository keeps what it is given, and looks into none of it. */
export const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
export const hash = (digit: string): string => digit.repeat(64);

/** The certificate of a school, made by its officer, and one for each signer, by the id it is to have and a digit for its fingerprint. */
export async function keysForTest(db: Db, officer: Member, at: Date, holders: readonly { readonly id: string; readonly digit: string; readonly of: Member }[]): Promise<void> {
  const key = (id: string, digit: string) => ({ id, certificate: bytes(id), fingerprint: hash(digit), sealedKey: 'sealed', validFrom: at, validUntil: at });
  await keepAuthority(db, officer, at, key('authority', 'a'));
  for (const { id, digit, of } of holders) await keepPersonKey(db, of, at, { personId: of.personId, authorityId: 'authority' }, key(id, digit));
}
