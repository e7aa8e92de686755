import { randomUUID } from 'node:crypto';
import type { Role } from '@/lib/access/roles';
import type { Db } from '@/lib/db/client';
import { writeAcceptance } from '@/lib/db/people/accept-invitation';
import { createSchool } from '@/lib/db/people/create-school';
import { findMember, type Member } from '@/lib/db/people/find-member';
import { addInvitation, findInvitation } from '@/lib/db/people/invitations';
import { runInTransaction } from '@/lib/db/transaction';
import { hashPassword } from '@/lib/server/auth/passwords';
import { DEMO_PEOPLE } from '../start/demo-people.mjs';
import type { Calendar } from './calendar';

/** Our own invention, the telephone numbers too: nobody answers at 555 01…. */
export const SCHOOL = {
  schoolName: 'Alder Quay School (demo)', schoolAddress: '3 Quay Road, Alder Quay: gate in Weir Lane, sports hall behind it', emergencyNumber: '555 0100',
  meetingPlace: 'Under the lime trees at the north gate', secondMeetingPlace: 'The far end of the sports field', officerPhone: '555 0112',
  units: 'metric', paper: 'A4', locale: 'en-GB', timeZone: 'Europe/London',
} as const;

const BEGAN = -90;

/** Makes the school with its officer; the others come by invitation, as anybody does. */
export async function makePeople(db: Db, calendar: Calendar, password: string): Promise<Readonly<Record<Role, Member>>> {
  const passwordHash = await hashPassword(password);
  const [first, ...others] = DEMO_PEOPLE;
  if (first === undefined) throw new Error('the demo has nobody in it');
  const { name, post, email } = first;
  await runInTransaction(db, (tx) => createSchool(tx, { input: { ...SCHOOL, name, post, email }, passwordHash, at: calendar.at(BEGAN, '09:00'), isDemo: true }));
  const officer = await memberOf(db, email);
  const members = [officer];
  for (const [index, person] of others.entries()) members.push(await join(db, officer, person, passwordHash, calendar.at(BEGAN + 1 + index, '10:00')));
  return { 'safety-officer': officer, 'organiser': withRole(members, 'organiser'), 'event-organiser': withRole(members, 'event-organiser'), 'helper': withRole(members, 'helper') };
}

async function join(db: Db, officer: Member, { role, name, post, email }: (typeof DEMO_PEOPLE)[number], passwordHash: string, at: Date): Promise<Member> {
  const seal = randomUUID();
  await addInvitation(db, officer, at, { forWhom: name, email, role }, () => seal);
  const invitation = await findInvitation(db, seal);
  if (invitation === null) throw new Error(`the invitation of ${name} is not there`);
  const joined = await writeAcceptance(db, invitation, { token: '', name, post, email, password: '' }, passwordHash, at);
  if (joined !== 'joined') throw new Error(`${name} could not join: ${joined}`);
  return memberOf(db, email);
}

async function memberOf(db: Db, email: string): Promise<Member> {
  const user = await db.user.findUniqueOrThrow({ where: { email }, select: { id: true } });
  const member = await findMember(db, user.id);
  if (member === null) throw new Error(`${email} belongs to no school`);
  return member;
}

function withRole(members: readonly Member[], role: Role): Member {
  const member = members.find((one) => one.role === role);
  if (member === undefined) throw new Error(`nobody in the demo is ${role}`);
  return member;
}
