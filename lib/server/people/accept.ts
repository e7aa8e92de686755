import 'server-only';
import { writeAcceptance } from '@/lib/db/people/accept-invitation';
import { findInvitation, type Invitation } from '@/lib/db/people/invitations';
import { getSchool } from '@/lib/db/people/school-record';
import { judgeInvitation, type AcceptInput } from '@/lib/people/invitation';
import { passwordFault } from '@/lib/people/password';
import { isCommonPassword } from '../auth/common-passwords';
import { hashPassword } from '../auth/passwords';
import { signIn } from '../auth/sign-in';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { sealOfToken } from './invitation-token';

/** A link that works, with the name of its school. */
export interface OpenedLink { readonly ok: true; readonly invitation: Invitation; readonly school: string }

export type OpenedInvitation = OpenedLink | { readonly ok: false; readonly reason: string };

/** Returns what a link invites to, or why it does not work. */
export async function openInvitation(token: string): Promise<OpenedInvitation> {
  const verdict = judgeInvitation(await findInvitation(database(), sealOfToken(token)), new Date());
  if (!verdict.ok) return verdict;
  const { name } = await getSchool(database(), verdict.invitation.schoolId);
  return { ...verdict, school: name };
}

const GONE = 'This link was used, taken back or grew too old while you were writing. Ask your safety officer for another';
const TAKEN = 'Somebody signs in with this address already. Is it you? Then use “I have an account” above: it leads back here. If your account was closed, ask your safety officer to open it again';

/** Makes the account a link is for, signs its person in and leads to Today. */
export async function acceptInvitation(input: AcceptInput): Promise<Outcome> {
  const opened = await openInvitation(input.token);
  if (!opened.ok) return refused(null, opened.reason);
  const fault = passwordFault({ password: input.password, isCommon: isCommonPassword, known: [input.email, input.name, opened.school] });
  if (fault !== null) return refused('password', fault);
  const accepted = await writeAcceptance(database(), opened.invitation, input, await hashPassword(input.password), new Date());
  if (accepted === 'gone') return refused(null, GONE);
  if (accepted === 'email-taken') return refused('email', TAKEN);
  return signIn({ email: input.email, password: input.password, then: '/today' });
}
