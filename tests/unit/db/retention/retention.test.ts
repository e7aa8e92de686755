import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { findIncident } from '@/lib/db/incidents/read-incidents';
import { REMOVED_PERSON, forgetPerson } from '@/lib/db/people/forget-person';
import { removeWhatIsDue } from '@/lib/db/retention/remove-due';
import { writeRetention } from '@/lib/db/retention/retention-rules';
import { sweepSignIns } from '@/lib/db/retention/sweep';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import { dueBefore, RetentionSchema } from '@/lib/people/retention';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { INCIDENT_AT, incidentForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const PHOTO: PhotoToKeep = { bytes: new Uint8Array([1, 2, 3]), mimeType: 'image/jpeg', sha256: 'a'.repeat(64), widthPx: 2, heightPx: 1 };
const PERSON = { role: 'student', initials: 'A. B.', hurt: 'yes', breathed: 'no', firstAid: 'cooled' } as const;
const monthsLater = (months: number) => new Date(Date.UTC(2026, 10 + months, 26));

describe('months', () => {
  it('are those of the calendar, and the last day stands in for one a month does not have', () => {
    expect(dueBefore(new Date('2026-03-31T10:00:00Z'), 1).toISOString()).toBe('2026-02-28T10:00:00.000Z');
    expect(dueBefore(new Date('2026-11-25T10:00:00Z'), 24).toISOString()).toBe('2024-11-25T10:00:00.000Z');
  });

  it.each([['', null], ['24', 24]])('"%s" is read', (typed, value) => {
    expect(RetentionSchema.parse({ revision: '1', photosKeptMonths: typed, personsKeptMonths: '' }).photosKeptMonths).toBe(value);
  });

  it.each(['5', '121', '1.5', 'all'])('"%s" is refused', (typed) => {
    expect(RetentionSchema.safeParse({ revision: '1', photosKeptMonths: typed, personsKeptMonths: '' }).success).toBe(false);
  });
});

describe.each(ENGINES_HERE)('what a school keeps for a time on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    return { db, ...school, incidentId: await incidentForTest(db, school.officer, {}, { persons: [PERSON], photos: [PHOTO] }) };
  }

  it('goes when it is due and its incident is closed, and the log says so', async () => {
    const { db, scope, officer, incidentId } = await setting();
    expect(await writeRetention(db, officer, INCIDENT_AT, { photosKeptMonths: 12, personsKeptMonths: 24 }, 1)).toBe(true);
    await removeWhatIsDue(db, monthsLater(30));
    expect((await findIncident(db, scope, incidentId))?.photos[0]?.removedAt).toBeNull();
    await db.incident.updateMany({ where: { ...scope, id: incidentId }, data: { state: 'closed' } });
    await removeWhatIsDue(db, monthsLater(13));
    expect(await findIncident(db, scope, incidentId)).toMatchObject({ photos: [{ removedAt: monthsLater(13) }], persons: [{ initials: 'A. B.' }] });
    await removeWhatIsDue(db, monthsLater(30));
    expect((await findIncident(db, scope, incidentId))?.persons).toMatchObject([{ role: 'student', hurt: 'yes', initials: null, firstAid: null }]);
    expect((await db.storedFile.findFirst({ where: scope }))?.byteCount).toBe(0);
    const entries = await db.auditEntry.findMany({ where: { ...scope, kind: 'personal-data.removed' } });
    expect(entries.map(({ actorId }) => actorId)).toEqual([null, null]);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
  });

  it('stays for good where the school has set nothing, and a second day takes nothing twice', async () => {
    const { db, scope, officer, incidentId } = await setting();
    await db.incident.updateMany({ where: { ...scope, id: incidentId }, data: { state: 'closed' } });
    await removeWhatIsDue(db, monthsLater(600));
    expect((await findIncident(db, scope, incidentId))?.persons[0]?.initials).toBe('A. B.');
    await writeRetention(db, officer, INCIDENT_AT, { photosKeptMonths: 12, personsKeptMonths: null }, 1);
    await removeWhatIsDue(db, monthsLater(13));
    await removeWhatIsDue(db, monthsLater(14));
    expect(await db.auditEntry.count({ where: { ...scope, kind: 'personal-data.removed' } })).toBe(1);
  });

  it('is changed by one of two officers, and the second is told', async () => {
    const { db, officer } = await setting();
    expect(await writeRetention(db, officer, INCIDENT_AT, { photosKeptMonths: 12, personsKeptMonths: null }, 1)).toBe(true);
    expect(await writeRetention(db, officer, INCIDENT_AT, { photosKeptMonths: 18, personsKeptMonths: null }, 1)).toBe(false);
  });

  it('ended sign-ins go, and those that hold stay', async () => {
    const { db, officer } = await setting();
    const { userId } = await db.person.findUniqueOrThrow({ where: { id: officer.personId } });
    const session = (expiresAt: Date) => db.signInSession.create({ data: { id: randomUUID(), token: randomUUID(), userId, expiresAt, createdAt: INCIDENT_AT, updatedAt: INCIDENT_AT } });
    await session(monthsLater(1));
    const { id } = await session(monthsLater(3));
    await sweepSignIns(db, monthsLater(2));
    expect((await db.signInSession.findMany()).map((one) => one.id)).toEqual([id]);
  });
});

describe.each(ENGINES_HERE)('somebody who left on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const organiser = await memberForTest(db, school.scope, 'organiser', 'K. M.');
    const { personId } = organiser;
    const incidentId = await incidentForTest(db, organiser);
    const leave = () => db.membership.updateMany({ where: { personId }, data: { endedAt: INCIDENT_AT } });
    return { db, ...school, personId, incidentId, leave };
  }

  it('is forgotten: no name, no address, no way in; the log keeps what it says', async () => {
    const { db, scope, officer, personId, incidentId, leave } = await setting();
    await leave();
    expect(await forgetPerson(db, officer, INCIDENT_AT, personId)).toBeNull();
    const person = await db.person.findUniqueOrThrow({ where: { id: personId }, include: { user: true } });
    expect([person.name, person.user.name, person.user.email.endsWith('@removed.invalid')]).toEqual([REMOVED_PERSON, REMOVED_PERSON, true]);
    expect(await db.signInMethod.count({ where: { userId: person.userId } })).toBe(0);
    expect((await findIncident(db, scope, incidentId))?.byName).toBe(REMOVED_PERSON);
    expect(await db.auditEntry.count({ where: { ...scope, actorName: 'K. M.' } })).toBe(1);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
  });

  it('is not while they work here, nor by another school, nor when another school has them too', async () => {
    const { db, officer, personId, leave } = await setting();
    expect(await forgetPerson(db, officer, INCIDENT_AT, personId)).toMatch(/Close the account/);
    await leave();
    const other = await schoolForTest(db, 'Other');
    expect(await forgetPerson(db, other.officer, INCIDENT_AT, personId)).toMatch(/does not belong/);
    await db.membership.create({ data: { ...other.scope, personId, role: 'helper', post: 'coach', joinedAt: INCIDENT_AT } });
    expect(await forgetPerson(db, officer, INCIDENT_AT, personId)).toMatch(/another school/);
    expect((await db.person.findUniqueOrThrow({ where: { id: personId } })).name).toBe('K. M.');
  });
});
