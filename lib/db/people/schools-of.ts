import type { Db } from '../client';

/** A school somebody works in. */
export interface SchoolOfPerson { readonly schoolId: string; readonly name: string; /** what they are there, as under a signature */ readonly post: string }

/** The schools a person works in now, by name. */
export async function schoolsOf(db: Pick<Db, 'membership'>, personId: string): Promise<readonly SchoolOfPerson[]> {
  const rows = await db.membership.findMany({ where: { personId, endedAt: null, person: { removedAt: null } }, select: { schoolId: true, post: true, school: { select: { name: true } } } });
  return rows.map(({ schoolId, post, school }) => ({ schoolId, post, name: school.name })).sort((one, other) => one.name.localeCompare(other.name));
}
