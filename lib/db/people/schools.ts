import type { Db } from '../client';

/** Says whether any school was made yet. */
export async function hasSchool(db: Pick<Db, 'school'>): Promise<boolean> {
  return (await db.school.findFirst({ select: { id: true } })) !== null;
}
