import 'server-only';
import { type Joined, writeJoining } from '@/lib/db/people/accept-invitation';
import { type SchoolOfPerson, schoolsOf } from '@/lib/db/people/schools-of';
import { invitationPath, type JoinInput } from '@/lib/people/invitation';
import type { Actor } from '../actor';
import { endSession } from '../auth/sessions';
import { database } from '../database';
import { rememberSchoolOfId } from '../emergency/remembered-school';
import { refused, type Outcome } from '../forms/outcome';
import { openInvitation } from './accept';

const WHY_NOT: Readonly<Record<Exclude<Joined, 'joined'>, string>> = {
  gone: 'This link was used, taken back or grew too old in the meantime. Ask the safety officer who made it for another',
  member: 'You work at this school already. Nothing was changed, and the link still works for somebody else',
  closed: 'Your account at this school was closed. Ask its safety officer to open it again; the link still works for somebody else',
};

/** Makes the actor a member of one school more, by a link of it, and goes on there. */
export async function joinSchool(actor: Actor, { token, post }: JoinInput): Promise<Outcome> {
  const opened = await openInvitation(token);
  if (!opened.ok) return refused(null, opened.reason);
  const { personId, name } = actor;
  const joined = await writeJoining(database(), opened.invitation, { personId, name, post }, new Date());
  if (joined !== 'joined') return refused(null, WHY_NOT[joined]);
  await rememberSchoolOfId(opened.invitation.schoolId);
  return { ok: true, then: '/today' };
}

/** Where somebody who is signed in works: now, and at the school of a link, if they do. */
export async function placesBefore(actor: Actor, schoolId: string): Promise<{ readonly now: SchoolOfPerson | null; readonly there: boolean }> {
  const schools = await schoolsOf(database(), actor.personId);
  const at = (id: string): SchoolOfPerson | null => schools.find((school) => school.schoolId === id) ?? null;
  return { now: at(actor.schoolId), there: at(schoolId) !== null };
}

/** Lets somebody else use the link in this browser. */
export async function leaveToSomebodyElse({ token }: { readonly token: string }): Promise<Outcome> {
  await endSession();
  return { ok: true, then: invitationPath(token) };
}
