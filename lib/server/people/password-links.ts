import 'server-only';
import { timingSafeEqual } from 'node:crypto';
import { recordChange } from '@/lib/db/audit/record-change';
import { passwordHashOf } from '@/lib/db/people/accounts';
import { writePassword } from '@/lib/db/people/change-password';
import { findMember, type Member } from '@/lib/db/people/find-member';
import { listMembers } from '@/lib/db/people/members';
import { schoolsOf } from '@/lib/db/people/schools-of';
import { schoolScope } from '@/lib/db/scope';
import { passwordFault } from '@/lib/people/password';
import { readPasswordToken, type NewPasswordInput, type PasswordLink } from '@/lib/people/password-link';
import type { Actor } from '../actor';
import { isCommonPassword } from '../auth/common-passwords';
import { hashPassword } from '../auth/passwords';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { passwordLinkPath, sealOfLink } from './password-seal';
import { publicAddress } from './public-address';

const OF_OTHERS_TOO = 'They work at another school too, and with a new password one could act there. Whoever runs the program makes such a link at its command line: npm run new-password';

/** Makes a link by which somebody of the school sets a new password. One school hands out no key to another. */
export async function makePasswordLink(actor: Actor, { personId }: { readonly personId: string }): Promise<Outcome<PasswordLink>> {
  const member = (await listMembers(database(), schoolScope(actor))).find((one) => one.personId === personId && one.isActive);
  const hash = member ? await passwordHashOf(database(), member.userId) : null;
  if (!member || hash === null) return refused(null, 'Nobody of your school with an open account is meant by this');
  if ((await schoolsOf(database(), personId)).length > 1) return refused(null, OF_OTHERS_TOO);
  const now = new Date();
  await recordChange(database(), actor, now, () => Promise.resolve({ value: undefined, events: [{ kind: 'person.password-link-made', subjectId: personId, data: {} }] }));
  const address = await publicAddress(passwordLinkPath(member.userId, hash, now));
  return { ok: true, done: `Made for ${member.name}. It works once, for an hour, and is not shown again.`, data: { address } };
}

export type OpenedPasswordLink =
  | { readonly ok: true; readonly member: Member; readonly userId: string; readonly hash: string }
  | { readonly ok: false; readonly reason: string };

const NOT_GOOD = { ok: false, reason: 'This link does not work: it was used already, it is older than an hour, or a part of it is missing. Ask your safety officer for another' } as const;

/** Returns whose password a link sets, or why it sets none. */
export async function openPasswordLink(token: string): Promise<OpenedPasswordLink> {
  const said = readPasswordToken(token);
  if (!said || said.until <= Date.now()) return NOT_GOOD;
  const [hash, member] = await Promise.all([passwordHashOf(database(), said.userId), findMember(database(), said.userId)]);
  if (hash === null || !member) return NOT_GOOD;
  const [given, right] = [Buffer.from(said.seal), Buffer.from(sealOfLink(`${said.userId}.${said.until}`, hash))];
  return given.length === right.length && timingSafeEqual(given, right) ? { ok: true, member, userId: said.userId, hash } : NOT_GOOD;
}

/** Sets the password a link is for, ends every session of its person and leads to the sign-in. */
export async function setNewPassword({ token, password }: NewPasswordInput): Promise<Outcome> {
  const opened = await openPasswordLink(token);
  if (!opened.ok) return refused(null, opened.reason);
  const fault = passwordFault({ password, isCommon: isCommonPassword, known: [opened.member.name] });
  if (fault !== null) return refused('password', fault);
  const replacement = { userId: opened.userId, before: opened.hash, after: await hashPassword(password), keep: null };
  const written = await writePassword(database(), opened.member, new Date(), replacement);
  return written ? { ok: true, then: '/sign-in?new' } : refused(null, NOT_GOOD.reason);
}
