import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { Db } from '@/lib/db/client';
import type { Member } from '@/lib/db/people/find-member';
import { archivePlace } from '@/lib/db/places/archive-place';
import { bringBackPlace } from '@/lib/db/places/bring-back-place';
import { sitesPutAway } from '@/lib/db/places/put-away';
import { findArea, findSite, listSites } from '@/lib/db/places/read-sites';
import { createArea, createSite, updateArea, updateSite } from '@/lib/db/places/write-sites';
import { AreaInputSchema } from '@/lib/places/area-input';
import { SiteInputSchema } from '@/lib/places/site-input';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { later, MONDAY } from '@/tests/support/pack-for-tests';
import { schoolForTest, type SchoolForTest } from '@/tests/support/school-for-tests';

const SITE = SiteInputSchema.parse({ name: 'Riverside', kind: 'away', address: '2 River Road', emergencyNumber: '000' });
const AREA = AreaInputSchema.parse({ units: 'us', use: 'charging', name: 'Table', outdoors: 'no', lengthM: '30', airMode: 'closed', detectors: 'tested', surface: 'tile', fuelLoad: 'light', evacuationMin: '1' });
const member = ({ officer }: SchoolForTest): Member => ({ ...officer, role: 'safety-officer' });
const idOf = async (written: ReturnType<typeof createSite>): Promise<string> => {
  const result = await written;
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.id;
};
const kinds = async (db: Db, { scope }: SchoolForTest) => (await db.auditEntry.findMany({ where: scope, orderBy: { sequence: 'asc' } })).map(({ kind }) => kind);

describe.each(ENGINES_HERE)('sites and areas on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  const start = async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    const siteId = await idOf(createSite(db, member(ours), MONDAY, SITE));
    const areaId = await idOf(createArea(db, member(ours), MONDAY, siteId, AREA));
    return { db, ours, theirs, siteId, areaId };
  };

  it('are kept in SI with an entry in the log', async () => {
    const { db, ours, siteId, areaId } = await start();
    expect(await findSite(db, ours.scope, siteId)).toMatchObject({ ...SITE, revision: 1, areas: [{ id: areaId, ...AREA, evacuationS: 60 }] });
    expect((await listSites(db, ours.scope)).map(({ name }) => name)).toEqual(['Hall', 'Riverside']);
    expect(await kinds(db, ours)).toEqual(['site.added', 'area.added']);
    expect(await verifyLog(db, ours.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('are not seen, added to, changed or put away from the other school', async () => {
    const { db, ours, theirs, siteId, areaId } = await start();
    const them = member(theirs);
    expect(await findSite(db, theirs.scope, siteId)).toBeNull();
    expect(await findArea(db, theirs.scope, areaId)).toBeNull();
    expect((await listSites(db, theirs.scope)).map(({ name }) => name)).toEqual(['Hall']);
    expect(await createArea(db, them, MONDAY, siteId, { ...AREA, name: 'X' })).toMatchObject({ ok: false });
    expect(await updateSite(db, them, MONDAY, siteId, { ...SITE, name: 'X' }, 1)).toMatchObject({ ok: false });
    expect(await updateArea(db, them, MONDAY, areaId, { ...AREA, name: 'X' }, 1)).toMatchObject({ ok: false });
    expect(await archivePlace(db, them, MONDAY, { kind: 'site', id: siteId })).toBe(false);
    expect(await findSite(db, ours.scope, siteId)).toMatchObject({ name: 'Riverside', archivedAt: null });
    expect(await kinds(db, theirs)).toEqual([]);
  });

  it('come back after they were put away, and only for their own school', async () => {
    const { db, ours, theirs, siteId, areaId } = await start();
    for (const place of [{ kind: 'site', id: siteId }, { kind: 'area', id: areaId }] as const) {
      await archivePlace(db, member(ours), later(1), place);
      expect(await bringBackPlace(db, member(theirs), later(2), place)).toBe(false);
      expect(await bringBackPlace(db, member(ours), later(2), place)).toBe(true);
      expect(await bringBackPlace(db, member(ours), later(3), place)).toBe(false);
    }
    expect(await sitesPutAway(db, ours.scope)).toEqual([]);
    expect(await findSite(db, ours.scope, siteId)).toMatchObject({ archivedAt: null, areas: [{ id: areaId }] });
    expect((await kinds(db, ours)).slice(2)).toEqual(['site.archived', 'site.brought-back', 'area.archived', 'area.brought-back']);
  });

  it('keep who of two changed them first, and tell the second', async () => {
    const { db, ours, areaId, siteId } = await start();
    expect(await updateArea(db, member(ours), later(1), areaId, { ...AREA, exits: 2 }, 1)).toMatchObject({ ok: true });
    expect(await updateArea(db, member(ours), later(1), areaId, { ...AREA, exits: 3 }, 1)).toMatchObject({ ok: false, faults: [{ field: null }] });
    expect(await findArea(db, ours.scope, areaId)).toMatchObject({ exits: 2, revision: 2 });
    const both = await Promise.all(['A', 'B'].map((keyHolder) => updateSite(db, member(ours), later(2), siteId, { ...SITE, keyHolder }, 1)));
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('have names of their own, also when two are added at the same moment', async () => {
    const { db, ours, siteId, areaId } = await start();
    expect(await createArea(db, member(ours), MONDAY, siteId, { ...AREA, name: 'table' })).toMatchObject({ ok: false, faults: [{ field: 'name' }] });
    const both = await Promise.all([1, 2].map(() => createSite(db, member(ours), MONDAY, { ...SITE, name: 'Gym' })));
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await updateArea(db, member(ours), later(1), areaId, AREA, 1)).toMatchObject({ ok: true });
  });

  it('put away are no longer offered, and go on being named', async () => {
    const { db, ours, siteId, areaId } = await start();
    expect(await archivePlace(db, member(ours), later(1), { kind: 'area', id: areaId })).toBe(true);
    expect(await archivePlace(db, member(ours), later(1), { kind: 'area', id: areaId })).toBe(false);
    expect(await findSite(db, ours.scope, siteId)).toMatchObject({ areas: [] });
    expect(await findArea(db, ours.scope, areaId)).toMatchObject({ name: 'Table', archivedAt: later(1) });
    await archivePlace(db, member(ours), later(2), { kind: 'site', id: siteId });
    expect((await listSites(db, ours.scope)).map(({ name }) => name)).toEqual(['Hall']);
    expect((await listSites(db, ours.scope, 'archived')).map(({ name }) => name)).toEqual(['Hall', 'Riverside']);
    expect((await kinds(db, ours)).slice(-2)).toEqual(['area.archived', 'site.archived']);
  });
});
