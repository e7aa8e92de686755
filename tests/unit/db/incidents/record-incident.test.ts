import { describe, expect, it } from 'vitest';
import { keepDraft, findDraft } from '@/lib/db/incidents/drafts';
import { findIncident, listIncidents } from '@/lib/db/incidents/read-incidents';
import { recordIncident } from '@/lib/db/incidents/record-incident';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { placeIsolatedPack } from '@/lib/db/packs/move-pack';
import { causeOfIsolation } from '@/lib/packs/pack-history';
import { packHistory } from '@/lib/db/packs/read-packs';
import { standingOf } from '@/lib/incidents/incident';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { factsForTest, INCIDENT_AT, incidentForTest, packRowForTest, signedVersionForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';
import { secondLimits } from '@/tests/support/second-pack-limits';

describe.each(ENGINES_HERE)('an incident recorded on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    return { db, ...school, by: school.officer };
  }

  it('is read as it was typed, with its number', async () => {
    const { db, scope, by, siteId } = await setting();
    const facts = factsForTest({ where: { siteId, areaId: null, place: 'bench' }, whatHappened: 'came off the charger puffed up', contacted: ['head'] });
    const id = await incidentForTest(db, by, facts, { persons: [{ role: 'student', initials: 'K. M.', hurt: 'no', breathed: 'not-sure', firstAid: null }] });
    const incident = await findIncident(db, scope, id);
    expect(incident).toMatchObject({ number: 1, state: 'recorded', facts, first: facts, persons: [{ role: 'student', initials: 'K. M.', breathed: 'not-sure' }] });
    await incidentForTest(db, by);
    expect((await listIncidents(db, scope, null)).map(({ number }) => number)).toEqual([2, 1]);
  });

  it('isolates its packs with the cause each has, whatever state they were in, but for one that has left', async () => {
    const { db, scope, by } = await setting();
    const ids = { used: await packRowForTest(db, scope, 'W-11'), retired: await packRowForTest(db, scope, 'W-12', 'retired'), near: await packRowForTest(db, scope, 'W-07'), gone: await packRowForTest(db, scope, 'W-99', 'handed-over') };
    await incidentForTest(db, by, { packs: [{ label: 'w-11', part: 'involved' }, { label: 'W-12', part: 'involved' }, { label: ' W-07 ', part: 'nearby' }, { label: 'W-99', part: 'involved' }] });
    const history = async (id: string) => { const found = await packHistory(db, scope, id); return [found?.pack.state, found && causeOfIsolation(found)]; };
    expect(await history(ids.used)).toEqual(['isolated', 'incident']);
    expect(await history(ids.retired)).toEqual(['isolated', 'incident']);
    expect(await history(ids.near)).toEqual(['isolated', 'nearby']);
    expect(await history(ids.gone)).toEqual(['handed-over', null]);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
  });

  it('does not know where a pack is until somebody says so, and “not sure” is not knowing', async () => {
    const { db, scope, by } = await setting();
    const packId = await packRowForTest(db, scope, 'W-11');
    const id = await incidentForTest(db, by, { packs: [{ label: 'W-11', part: 'involved' }, { label: 'Z-1', part: 'involved' }] });
    const unplaced = async () => { const incident = await findIncident(db, scope, id); return incident === null ? null : standingOf(incident).packsUnplaced; };
    expect(await unplaced()).toEqual(['W-11']);
    expect((await findIncident(db, scope, id))?.unknownLabels).toEqual(['Z-1']);
    await placeIsolatedPack(db, by, INCIDENT_AT, secondLimits, { packId, placeNow: 'not-sure', placeNote: null });
    expect(await unplaced()).toEqual(['W-11']);
    await placeIsolatedPack(db, by, new Date(INCIDENT_AT.getTime() + 60_000), secondLimits, { packId, placeNow: 'outdoor-spot', placeNote: null });
    expect(await unplaced()).toEqual([]);
  });

  it('writes all of it or nothing', async () => {
    const { db, scope, by } = await setting();
    const packId = await packRowForTest(db, scope, 'W-11');
    const bytes = new Uint8Array([1]);
    const broken = { bytes, mimeType: 'image/jpeg', sha256: 'not a hash', widthPx: 1, heightPx: 1 };
    await expect(incidentForTest(db, by, { packs: [{ label: 'W-11', part: 'involved' }] }, { photos: [broken] })).rejects.toThrow();
    expect((await packHistory(db, scope, packId))?.pack.state).toBe('in-use');
    expect(await db.incident.count()).toBe(0);
    expect(await db.storedFile.count()).toBe(0);
  });

  it('sent twice is one incident', async () => {
    const { db, by } = await setting();
    const first = await incidentForTest(db, by, {}, { clientKey: 'the same form' });
    expect(await incidentForTest(db, by, {}, { clientKey: 'the same form' })).toBe(first);
    const [one, two] = await Promise.all([incidentForTest(db, by, {}, { clientKey: 'at once' }), incidentForTest(db, by, {}, { clientKey: 'at once' })]);
    expect(one).toBe(two);
    expect(await db.incident.count()).toBe(2);
  });

  it('takes the draft of whoever recorded it away, and nobody else’s', async () => {
    const { db, scope, by } = await setting();
    const other = await memberForTest(db, scope, 'helper', 'H. L.');
    await keepDraft(db, by, INCIDENT_AT, '{"hurt":"no"}');
    await keepDraft(db, by, INCIDENT_AT, '{"hurt":"yes"}');
    await keepDraft(db, other, INCIDENT_AT, '{}');
    expect((await findDraft(db, by))?.typedJson).toBe('{"hurt":"yes"}');
    await incidentForTest(db, by);
    expect(await findDraft(db, by)).toBeNull();
    expect(await findDraft(db, other)).not.toBeNull();
  });

  it('asks for a review of the signed assessment of its site once, and of every one when the site is not known', async () => {
    const { db, scope, by, siteId } = await setting();
    const yard = await db.site.create({ data: { ...scope, name: 'Yard', kind: 'own', address: 'yard', createdAt: INCIDENT_AT } });
    const [hallVersion, yardVersion] = [await signedVersionForTest(db, scope, siteId, by.personId), await signedVersionForTest(db, scope, yard.id, by.personId)];
    const reviews = async (id: string) => (await db.reviewRequest.findMany({ where: { incidentId: id } })).map(({ versionId }) => versionId).sort();
    const atHall = await incidentForTest(db, by, { where: { siteId, areaId: null, place: null } });
    expect(await reviews(atHall)).toEqual([hallVersion]);
    expect((await findIncident(db, scope, atHall))?.reviews).toMatchObject([{ versionId: hallVersion, title: 'Hall', settledAt: null }]);
    expect(await reviews(await incidentForTest(db, by, {}))).toEqual([hallVersion, yardVersion].sort());
    expect(await reviews(await incidentForTest(db, by, { kinds: ['near-miss'] }))).toEqual([]);
  });

  it('keeps to its own school: packs, places and readers of another are not found', async () => {
    const { db, scope, by } = await setting();
    const other = await schoolForTest(db, 'Gull Street School');
    const otherPack = await packRowForTest(db, other.scope, 'W-11');
    const id = await incidentForTest(db, by, { packs: [{ label: 'W-11', part: 'involved' }] });
    expect((await packHistory(db, other.scope, otherPack))?.pack.state).toBe('in-use');
    expect(await findIncident(db, other.scope, id)).toBeNull();
    expect(await listIncidents(db, other.scope, null)).toEqual([]);
    const elsewhere = await recordIncident(db, by, INCIDENT_AT, { clientKey: 'elsewhere', facts: factsForTest({ where: { siteId: other.siteId, areaId: null, place: null } }), persons: [], photos: [], contentVersion: '2.0.0' });
    expect(elsewhere).toMatchObject({ ok: false, faults: [{ field: 'where' }] });
    expect(await listIncidents(db, scope, 'somebody else')).toEqual([]);
  });
});
