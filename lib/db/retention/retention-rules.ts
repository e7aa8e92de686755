import type { Retention } from '@/lib/people/retention';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import type { SchoolScope } from '../scope';

const SELECT = { photosKeptMonths: true, personsKeptMonths: true } as const;

/** How long a school keeps what names or shows people. */
export function getRetention(db: Pick<Db, 'school'>, { schoolId }: SchoolScope): Promise<Retention> {
  return db.school.findUniqueOrThrow({ where: { id: schoolId }, select: SELECT });
}

/**
 * Changes how long, when nobody changed the school since `revision`.
 * @returns false when somebody did; then nothing was written
 */
export async function writeRetention(db: Db, by: Member, at: Date, after: Retention, revision: number): Promise<boolean> {
  return recordChange(db, by, at, async (tx) => {
    const before = await tx.school.findUniqueOrThrow({ where: { id: by.schoolId }, select: SELECT });
    const names = (['photosKeptMonths', 'personsKeptMonths'] as const).filter((name) => before[name] !== after[name]);
    if (names.length === 0) return { value: true, events: [] };
    const { count } = await tx.school.updateMany({ where: { id: by.schoolId, revision }, data: { ...after, revision: { increment: 1 } } });
    const changes = Object.fromEntries(names.map((name) => [name, { from: before[name], to: after[name] }]));
    return { value: count === 1, events: count === 1 ? [{ kind: 'school.changed', subjectId: by.schoolId, data: { changes } }] : [] };
  });
}
