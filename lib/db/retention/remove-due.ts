import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import { dueBefore } from '@/lib/people/retention';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';

const PROGRAM = 'The program, by the school’s own rule';

/** Takes away, school by school, what each one keeps for a time only. What it was and how old stands in the log. */
export async function removeWhatIsDue(db: Db, now: Date): Promise<void> {
  const schools = await db.school.findMany({ where: { OR: [{ photosKeptMonths: { not: null } }, { personsKeptMonths: { not: null } }] }, select: { id: true, photosKeptMonths: true, personsKeptMonths: true } });
  for (const { id, photosKeptMonths, personsKeptMonths } of schools) {
    const [scope, by]: [SchoolScope, AuditAuthor] = [schoolScope({ schoolId: id }), { schoolId: id, personId: null, name: PROGRAM }];
    await recordChange(db, by, now, async (tx) => ({
      value: undefined,
      events: [
        ...(photosKeptMonths === null ? [] : await removePhotos(tx, scope, now, dueBefore(now, photosKeptMonths))),
        ...(personsKeptMonths === null ? [] : await removePersons(tx, scope, now, dueBefore(now, personsKeptMonths))),
      ],
    }));
  }
}

/** The bytes of photos of incidents that are closed. That there was one, and when, stays. */
async function removePhotos(tx: Tx, scope: SchoolScope, now: Date, due: Date): Promise<readonly AuditEvent[]> {
  const where = { ...scope, removedAt: null, at: { lt: due }, incident: { state: 'closed' } };
  const photos = await tx.incidentPhoto.findMany({ where, select: { id: true, fileId: true } });
  if (photos.length === 0) return [];
  await tx.incidentPhoto.updateMany({ where: { ...scope, id: { in: photos.map(({ id }) => id) } }, data: { removedAt: now, caption: null } });
  await tx.storedFile.updateMany({ where: { ...scope, id: { in: photos.map(({ fileId }) => fileId) } }, data: { bytes: new Uint8Array(), byteCount: 0 } });
  return [removed(scope, `${photos.length} photos of closed incidents`, due)];
}

/** Initials and first aid of persons in closed incidents. Their role, and whether they were hurt, stays for the statistics. */
async function removePersons(tx: Tx, scope: SchoolScope, now: Date, due: Date): Promise<readonly AuditEvent[]> {
  const where = { ...scope, removedAt: null, incident: { state: 'closed', recordedAt: { lt: due } } };
  const persons = await tx.incidentPerson.findMany({ where, select: { id: true } });
  if (persons.length === 0) return [];
  await tx.incidentPerson.updateMany({ where: { ...scope, id: { in: persons.map(({ id }) => id) } }, data: { initials: null, firstAid: null, removedAt: now } });
  return [removed(scope, `initials and first aid of ${persons.length} persons in closed incidents`, due)];
}

function removed({ schoolId }: SchoolScope, what: string, due: Date): AuditEvent {
  return { kind: 'personal-data.removed', subjectId: schoolId, data: { what, olderThan: due.toISOString().slice(0, 10) } };
}
