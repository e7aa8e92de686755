import type { AuditEvent } from '@/lib/audit/event';
import type { SchoolFields } from '@/lib/people/school-fields';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from './find-member';

const COLUMNS = {
  name: true, address: true, emergencyNumber: true, meetingPlace: true, secondMeetingPlace: true, officerPhone: true,
  units: true, paper: true, locale: true, timeZone: true,
} as const;

/** Returns what a school says about itself. Throws when there is none of this id: nobody is a member of it then. */
export function getSchool(db: Db, schoolId: string) {
  return db.school.findUniqueOrThrow({ where: { id: schoolId }, select: { ...COLUMNS, id: true, demo: true, revision: true } });
}

/** The fields of the form as columns. */
export function schoolColumns({ schoolName, schoolAddress, emergencyNumber, meetingPlace, secondMeetingPlace, officerPhone, units, paper, locale, timeZone }: SchoolFields) {
  return { name: schoolName, address: schoolAddress, emergencyNumber, meetingPlace, secondMeetingPlace, officerPhone, units, paper, locale, timeZone };
}

/**
 * Changes a school, when nobody changed it since `revision`.
 * @returns false when somebody did; then nothing was written
 */
export async function changeSchool(db: Db, by: Member, at: Date, fields: SchoolFields, revision: number): Promise<boolean> {
  const after = schoolColumns(fields);
  return recordChange(db, by, at, async (tx) => {
    const before = await tx.school.findUniqueOrThrow({ where: { id: by.schoolId }, select: COLUMNS });
    const changes = differences(before, after);
    if (Object.keys(changes).length === 0) return { value: true, events: [] };
    const changed = await tx.school.updateMany({ where: { id: by.schoolId, revision }, data: { ...after, revision: { increment: 1 } } });
    const events: AuditEvent[] = changed.count === 1 ? [{ kind: 'school.changed', subjectId: by.schoolId, data: { changes } }] : [];
    return { value: changed.count === 1, events };
  });
}

type Columns = ReturnType<typeof schoolColumns>;

function differences(before: Record<keyof Columns, string | null>, after: Columns): Record<string, { from: string | null; to: string | null }> {
  const names = Object.keys(COLUMNS) as (keyof Columns)[];
  return Object.fromEntries(names.filter((name) => before[name] !== after[name]).map((name) => [name, { from: before[name], to: after[name] }]));
}
