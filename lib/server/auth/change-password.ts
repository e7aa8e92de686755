import 'server-only';
import { headers } from 'next/headers';
import { passwordHashOf } from '@/lib/db/people/accounts';
import { writePassword } from '@/lib/db/people/change-password';
import type { ChangePasswordInput } from '@/lib/people/change-password';
import { passwordFault } from '@/lib/people/password';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { auth } from './auth';
import { isCommonPassword } from './common-passwords';
import { confirmPassword } from './confirm-password';
import { hashPassword } from './passwords';

const CHANGED_MEANWHILE = 'Your password was changed in another window in the meantime. Sign in again';

/** Replaces the actor's own password, which has to be given, and signs every other browser of theirs out. */
export async function changePassword(actor: Actor, { currentPassword, newPassword }: ChangePasswordInput): Promise<Outcome> {
  const session = await auth().api.getSession({ headers: await headers() });
  if (!session) return refused(null, CHANGED_MEANWHILE);
  const wrong = await confirmPassword(currentPassword);
  if (wrong !== null) return refused('currentPassword', wrong);
  const { schoolName } = await currentSchool(actor);
  const fault = passwordFault({ password: newPassword, isCommon: isCommonPassword, known: [session.user.email, actor.name, schoolName] });
  if (fault !== null) return refused('newPassword', fault);
  const [before, after] = [await passwordHashOf(database(), session.user.id), await hashPassword(newPassword)];
  if (before === null || !(await writePassword(database(), actor, new Date(), { userId: session.user.id, before, after, keep: session.session.id }))) return refused(null, CHANGED_MEANWHILE);
  return { ok: true, done: 'Changed. Every other browser is signed out.' };
}
