import 'server-only';
import { recordChange } from '@/lib/db/audit/record-change';
import type { Db } from '@/lib/db/client';
import { passwordHashOf } from '@/lib/db/people/accounts';
import { findMember } from '@/lib/db/people/find-member';
import { passwordLinkPath } from './password-seal';

const BY = 'Whoever runs the program, at its command line';

/**
 * Makes a link for a new password for somebody of any school, by whoever runs the program: the way back in for an officer
 * whom no other officer can give one. It stands in the log of their school.
 * @param email of the account, in any capitals
 * @returns the path of the link, or why there is none
 */
export async function passwordLinkFromOutside(db: Db, email: string, now: Date): Promise<{ readonly ok: true; readonly name: string; readonly path: string } | { readonly ok: false; readonly reason: string }> {
  const user = await db.user.findUnique({ where: { email: email.trim().toLowerCase() }, select: { id: true } });
  const [member, hash] = user === null ? [null, null] : [await findMember(db, user.id), await passwordHashOf(db, user.id)];
  if (user === null || member === null || hash === null) return { ok: false, reason: `Nobody with an open account signs in as ${email}.` };
  const by = { schoolId: member.schoolId, personId: null, name: BY };
  await recordChange(db, by, now, () => Promise.resolve({ value: undefined, events: [{ kind: 'person.password-link-made', subjectId: member.personId, data: {} }] }));
  return { ok: true, name: member.name, path: passwordLinkPath(user.id, hash, now) };
}
