import 'server-only';
import { z } from 'zod';
import { type SchoolOfPerson, schoolsOf } from '@/lib/db/people/schools-of';
import type { Actor } from '../actor';
import { database } from '../database';
import { rememberSchoolOfId } from '../emergency/remembered-school';
import { refused, type Outcome } from '../forms/outcome';

export const ChooseSchoolSchema = z.object({ schoolId: z.string({ error: 'Choose a school' }) });

/** The schools the actor works in, the present one among them. */
export function ownSchools(actor: Actor): Promise<readonly SchoolOfPerson[]> {
  return schoolsOf(database(), actor.personId);
}

/** Goes on in another school of one's own. It counts on this device; the role is the one one has there. */
export async function chooseSchool(actor: Actor, { schoolId }: z.output<typeof ChooseSchoolSchema>): Promise<Outcome> {
  if (!(await ownSchools(actor)).some((school) => school.schoolId === schoolId)) return refused('schoolId', 'You do not work in this school');
  await rememberSchoolOfId(schoolId);
  return { ok: true, then: '/today' };
}
