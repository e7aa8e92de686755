import { describe, expect, it } from 'vitest';
import { rowOf, schoolScope, type SchoolScope } from '@/lib/db/scope';
import type { Db } from '@/lib/db/client';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');

function addPack(db: Db, scope: SchoolScope, siteId: string) {
  const facts = { label: 'W-11', labelKey: 'w-11', series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20' };
  return db.pack.create({ data: { ...scope, ...facts, siteId, state: 'in-use', stateSince: AT, createdAt: AT } });
}

/** Prisma's code for a foreign key that leads nowhere. */
const LEADS_NOWHERE = { code: 'P2003' };

describe.each(ENGINES_HERE)('two schools on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  it('do not see, change or remove each other\'s rows', async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    const pack = await addPack(db, ours.scope, ours.siteId);
    expect(await db.pack.findUnique({ where: rowOf(ours.scope, pack.id) })).toMatchObject({ label: 'W-11' });
    expect(await db.pack.findUnique({ where: rowOf(theirs.scope, pack.id) })).toBeNull();
    expect(await db.pack.findMany({ where: theirs.scope })).toEqual([]);
    expect(await db.pack.updateMany({ where: { ...theirs.scope, id: pack.id }, data: { state: 'retired' } })).toEqual({ count: 0 });
    await expect(db.pack.delete({ where: rowOf(theirs.scope, pack.id) })).rejects.toMatchObject({ code: 'P2025' });
  });

  it('may use the same label', async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    await addPack(db, ours.scope, ours.siteId);
    await addPack(db, theirs.scope, theirs.siteId);
    await expect(addPack(db, ours.scope, ours.siteId)).rejects.toMatchObject({ code: 'P2002' });
  });

  it('cannot be joined by a row, whatever the program asks', async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    await expect(addPack(db, ours.scope, theirs.siteId)).rejects.toMatchObject(LEADS_NOWHERE);
    const pack = await addPack(db, ours.scope, ours.siteId);
    await expect(db.pack.update({ where: rowOf(ours.scope, pack.id), data: { siteId: theirs.siteId } })).rejects.toMatchObject(LEADS_NOWHERE);
    const check = { purpose: 'plain', measuresJson: '{}', contentVersion: '2.0.0', resultJson: '{}', byName: 'R. O.', at: AT };
    await expect(db.packCheck.create({ data: { ...theirs.scope, ...check, packId: pack.id, byId: theirs.officer.personId } })).rejects.toMatchObject(LEADS_NOWHERE);
    await expect(db.packCheck.create({ data: { ...ours.scope, ...check, packId: pack.id, byId: theirs.officer.personId } })).rejects.toMatchObject(LEADS_NOWHERE);
  });

  it('keep what was done: nothing with a history can be removed', async () => {
    const { db } = await newDatabase();
    const { scope, siteId, officer } = await schoolForTest(db);
    await addPack(db, scope, siteId);
    await expect(db.site.delete({ where: rowOf(scope, siteId) })).rejects.toMatchObject(LEADS_NOWHERE);
    await expect(db.person.delete({ where: { id: officer.personId } })).rejects.toMatchObject(LEADS_NOWHERE);
    await expect(db.school.delete({ where: { id: scope.schoolId } })).rejects.toMatchObject(LEADS_NOWHERE);
  });
});

describe('schoolScope', () => {
  it('has none for somebody without a school', () => {
    expect(() => schoolScope({ schoolId: '' })).toThrow('no scope');
  });
});
