import { describe, expect, it } from 'vitest';
import type { AuditEvent } from '@/lib/audit/event';
import { appendAudit } from '@/lib/db/audit/append-audit';
import { recordChange } from '@/lib/db/audit/record-change';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { Db } from '@/lib/db/client';
import { MetAnother } from '@/lib/db/why-to-try-again';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { schoolForTest, type SchoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T09:30:00.123Z');
const archived = (subjectId: string): AuditEvent => ({ kind: 'site.archived', subjectId, data: {} });

/** Renames the site and says so in the log, as a use case does. */
function rename(db: Db, { scope, siteId, officer }: SchoolForTest, to: string) {
  return recordChange(db, officer, AT, async (tx) => {
    const site = await tx.site.findFirstOrThrow({ where: { ...scope, id: siteId } });
    const changed = await tx.site.updateMany({ where: { ...scope, id: siteId, revision: site.revision }, data: { name: to, revision: { increment: 1 } } });
    if (changed.count !== 1) throw new MetAnother('the site was changed in between');
    return { value: to, events: [{ kind: 'site.changed', subjectId: siteId, data: { changes: { name: { from: site.name, to } } } }] };
  });
}

const logOf = (db: Db, { scope }: SchoolForTest) => db.auditEntry.findMany({ where: scope, orderBy: { sequence: 'asc' } });

describe.each(ENGINES_HERE)('the log on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  it('numbers entries from 1 in each school and copies the name of whoever acted', async () => {
    const { db } = await newDatabase();
    const [one, two] = [await schoolForTest(db, 'One'), await schoolForTest(db, 'Two')];
    await rename(db, one, 'Gym');
    await rename(db, one, 'Gym 2');
    await rename(db, two, 'Attic');
    expect((await logOf(db, one)).map(({ sequence, actorName, at }) => ({ sequence, actorName, at }))).toEqual([1, 2].map((sequence) => ({ sequence, actorName: 'R. O.', at: AT })));
    expect((await logOf(db, two)).map(({ sequence }) => sequence)).toEqual([1]);
    expect(await verifyLog(db, one.scope.schoolId)).toMatchObject({ ok: true, end: { sequence: 2 } });
  });

  it('gives simultaneous writers numbers without a gap, each row with its entry', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const names = Array.from({ length: 8 }, (_, index) => `Hall ${index}`);
    await Promise.all(names.map((name) => rename(db, school, name)));
    const log = await logOf(db, school);
    expect(log.map(({ sequence }) => sequence)).toEqual(names.map((_, index) => index + 1));
    expect(await verifyLog(db, school.scope.schoolId)).toMatchObject({ ok: true, end: { sequence: 8 } });
    // Each change says what stood there before: one line from the first name to the last, so nothing was lost.
    const steps = log.map(({ dataJson }) => (JSON.parse(dataJson) as { changes: { name: { from: string; to: string } } }).changes.name);
    expect(steps.map(({ from }) => from)).toEqual(['Hall', ...steps.slice(0, -1).map(({ to }) => to)]);
    expect((await db.site.findFirstOrThrow({ where: school.scope })).name).toBe(steps.at(-1)?.to);
  });

  it('holds several events of one change together', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    await Promise.all(Array.from({ length: 6 }, (_, index) => recordChange(db, school.officer, AT, async () => ({ value: null, events: [archived(`a${index}`), archived(`b${index}`)] }))));
    const subjects = (await logOf(db, school)).map(({ subjectId }) => subjectId);
    expect(subjects).toHaveLength(12);
    for (let index = 0; index < 12; index += 2) expect(subjects[index + 1]).toBe(subjects[index]?.replace('a', 'b'));
    expect(await verifyLog(db, school.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('takes back row and entry together', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const work = recordChange(db, school.officer, AT, async (tx) => {
      await tx.site.updateMany({ where: school.scope, data: { name: 'Lost' } });
      await appendAudit(tx, school.officer, AT, [archived(school.siteId)]);
      throw new Error('the paper jammed');
    });
    await expect(work).rejects.toThrow('the paper jammed');
    expect((await db.site.findFirstOrThrow({ where: school.scope })).name).toBe('Hall');
    expect(await logOf(db, school)).toEqual([]);
    expect(await db.auditHead.findFirst({ where: school.scope })).toMatchObject({ sequence: 0 });
  });

  it('refuses the change when its entry cannot be written', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const wrong: AuditEvent = { kind: 'site.added', subjectId: 'x', data: Object.assign({ name: 'Gym' }, { pupil: 'A. B.' }) };
    const work = recordChange(db, school.officer, AT, async (tx) => {
      await tx.site.updateMany({ where: school.scope, data: { name: 'Gym' } });
      return { value: null, events: [wrong] };
    });
    await expect(work).rejects.toThrow('pupil');
    expect((await db.site.findFirstOrThrow({ where: school.scope })).name).toBe('Hall');
  });

  it('writes nothing for a change that changed nothing', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    expect(await recordChange(db, school.officer, AT, async () => ({ value: 'refused', events: [] }))).toBe('refused');
    expect(await logOf(db, school)).toEqual([]);
  });

  it('shows an altered, a removed and a cut-off entry', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const { schoolId } = school.scope;
    for (const name of ['A', 'B', 'C', 'D']) await rename(db, school, name);
    const row = (sequence: number) => ({ schoolId_sequence: { schoolId, sequence } });
    const kept = await db.auditEntry.findUniqueOrThrow({ where: row(2) });

    await db.auditEntry.update({ where: row(2), data: { actorName: 'K. M.' } });
    expect(await verifyLog(db, schoolId)).toEqual({ ok: false, sequence: 2, fault: 'altered' });
    await db.auditEntry.delete({ where: row(2) });
    expect(await verifyLog(db, schoolId)).toEqual({ ok: false, sequence: 3, fault: 'gap' });
    await db.auditEntry.create({ data: kept });
    expect(await verifyLog(db, schoolId)).toMatchObject({ ok: true });

    await db.auditEntry.delete({ where: row(4) });
    expect(await verifyLog(db, schoolId)).toEqual({ ok: false, sequence: 4, fault: 'cut' });
    await db.auditHead.delete({ where: { schoolId } });
    expect(await verifyLog(db, schoolId)).toEqual({ ok: false, sequence: 4, fault: 'cut' });
  });

  it('is checked over more entries than are read at once', async () => {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const events = Array.from({ length: 9 }, (_, index) => archived(`s${index}`));
    await recordChange(db, school.officer, AT, async () => ({ value: null, events }));
    const whole = await verifyLog(db, school.scope.schoolId);
    expect(whole).toMatchObject({ ok: true, end: { sequence: 9 } });
    for (const page of [1, 3, 4, 9, 10]) expect(await verifyLog(db, school.scope.schoolId, page)).toEqual(whole);
    await db.auditEntry.updateMany({ where: { ...school.scope, sequence: 7 }, data: { dataJson: '{"x":1}' } });
    for (const page of [1, 3, 4, 9, 10]) expect(await verifyLog(db, school.scope.schoolId, page)).toEqual({ ok: false, sequence: 7, fault: 'altered' });
  });
});
