import 'server-only';
import type { Role } from '@/lib/access/roles';
import { listMembers, type SchoolMember } from '@/lib/db/people/members';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from './current-school';

/** Somebody of the school, as the screens show them. */
export interface PersonRow {
  readonly personId: string;
  readonly name: string;
  readonly post: string;
  readonly email: string;
  readonly role: Role;
  readonly isActive: boolean;
  /** the day the account was closed, written as the school writes dates; null while it is open */
  readonly closedOn: string | null;
}

/** Returns everybody of the actor's school, open accounts first. */
export async function listPeople(actor: Actor): Promise<readonly PersonRow[]> {
  const { locale, timeZone } = await currentSchool(actor);
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone });
  return (await listMembers(database(), schoolScope(actor))).map((member) => rowOf(member, format));
}

/** Returns one of them, or null when there is nobody of this id in the actor's school. */
export async function findPerson(actor: Actor, personId: string): Promise<PersonRow | null> {
  return (await listPeople(actor)).find((person) => person.personId === personId) ?? null;
}

function rowOf({ personId, name, post, email, role, isActive, endedAt }: SchoolMember, format: Intl.DateTimeFormat): PersonRow {
  return { personId, name, post, email, role, isActive, closedOn: endedAt && format.format(endedAt) };
}
