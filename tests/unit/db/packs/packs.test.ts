import { describe, expect, it } from 'vitest';
import { currentContent } from '@/lib/content/editions';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { recordChange } from '@/lib/db/audit/record-change';
import type { Db } from '@/lib/db/client';
import { addPacks as writePacks } from '@/lib/db/packs/add-packs';
import { changePackDetails } from '@/lib/db/packs/change-pack';
import { isolatePacks } from '@/lib/db/packs/isolate-packs';
import { changePackState, placeIsolatedPack } from '@/lib/db/packs/move-pack';
import { listPacks, packHistory, takenLabels } from '@/lib/db/packs/read-packs';
import { recordCheck } from '@/lib/db/packs/record-check';
import type { Member } from '@/lib/db/people/find-member';
import { addPacks, type PackCommand } from '@/lib/packs/change-pack';
import { type PackInput, PackInputSchema } from '@/lib/packs/pack-input';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { later, MONDAY } from '@/tests/support/pack-for-tests';
import { schoolForTest, type SchoolForTest } from '@/tests/support/school-for-tests';
import { soundPack } from '@/tests/support/second-pack-limits';

const LIMITS = currentContent.packLimits;
const input = (given: Record<string, string> = {}): PackInput => PackInputSchema.parse({ label: 'W-11', series: '4', capacityMah: '850', cellType: 'full-4-20', secondHand: 'no', chargesBefore: '10', ...given });
const command = (given: Record<string, string>, revision = 1): PackCommand => ({ input: input(given), revision, today: '2026-11-25' });
const member = ({ officer }: SchoolForTest): Member => ({ ...officer, role: 'safety-officer' });
const enter = (db: Db, school: SchoolForTest, ...packs: PackInput[]) => writePacks(db, member(school), MONDAY, LIMITS, 'form', (taken) => addPacks(packs, taken, '2026-11-25'));

async function entered(db: Db, school: SchoolForTest, given: Record<string, string> = {}): Promise<string> {
  const added = await enter(db, school, input(given));
  if (!added.ok) throw new Error(JSON.stringify(added.faults));
  return added.ids[0] ?? '';
}

const check = (packId: string, given: PackMeasures = {}) => {
  const measures = { ...soundPack, ...given };
  return { packId, purpose: 'plain' as const, contentVersion: currentContent.version, note: null, found: { measures, cellVolts: [3.8, 3.81, null, 3.79], resistance: [], result: packVerdict(LIMITS, measures) } };
};
const kinds = async (db: Db, { scope }: SchoolForTest) => (await db.auditEntry.findMany({ where: scope, orderBy: { sequence: 'asc' } })).map(({ kind }) => kind);

describe.each(ENGINES_HERE)('the pack register on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  const start = async () => {
    const { db } = await newDatabase();
    return { db, ours: await schoolForTest(db, 'Ours'), theirs: await schoolForTest(db, 'Theirs') };
  };

  it('holds what was entered, with its first state and an entry in the log', async () => {
    const { db, ours } = await start();
    const id = await entered(db, ours, { printedWh: '12,6', notes: 'new' });
    expect(await packHistory(db, ours.scope, id)).toMatchObject({ pack: { label: 'W-11', printedWh: 12.6, secondHand: false, state: 'in-use', revision: 1 }, charges: 10, checks: [], changes: [{ from: null, to: 'in-use', byName: 'R. O.' }] });
    expect(await kinds(db, ours)).toEqual(['pack.added']);
    expect(await verifyLog(db, ours.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('takes all of a table or none of it', async () => {
    const { db, ours } = await start();
    await entered(db, ours, { label: 'W-03' });
    expect(await enter(db, ours, input({ label: 'W-01' }), input({ label: 'W-02' }), input({ label: 'w-03' }))).toMatchObject({ ok: false, faults: [{ field: 'label' }] });
    expect(await takenLabels(db, ours.scope)).toEqual(['W-03']);
    expect(await enter(db, ours, input({ label: 'W-01' }), input({ label: 'W-02', areaId: 'of-nobody' }))).toMatchObject({ ok: false, faults: [{ field: 'areaId' }] });
    expect(await takenLabels(db, ours.scope)).toEqual(['W-03']);
  });

  it('gives a label once, also when two enter it at the same moment', async () => {
    const { db, ours, theirs } = await start();
    const results = await Promise.all([enter(db, ours, input()), enter(db, ours, input())]);
    expect(results.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await enter(db, theirs, input())).toMatchObject({ ok: true });
  });

  it('is not seen, changed, checked or moved from the other school', async () => {
    const { db, ours, theirs } = await start();
    const id = await entered(db, ours);
    const them = member(theirs);
    expect(await listPacks(db, theirs.scope)).toEqual([]);
    expect(await packHistory(db, theirs.scope, id)).toBeNull();
    const refused = { ok: false, faults: [{ field: null, message: 'Your register has no such pack' }] };
    expect(await changePackDetails(db, them, MONDAY, id, command({ label: 'X' }))).toEqual(refused);
    expect(await recordCheck(db, them, MONDAY, check(id))).toEqual(refused);
    expect(await changePackState(db, them, MONDAY, LIMITS, { packId: id, to: 'retired', reason: 'x', collectedBy: null, receiverName: null })).toEqual(refused);
    expect(await placeIsolatedPack(db, them, MONDAY, LIMITS, { packId: id, placeNow: 'left', placeNote: null })).toEqual(refused);
    const events = await recordChange(db, them, MONDAY, async (tx) => {
      const isolated = await isolatePacks({ tx, scope: theirs.scope, by: them, at: MONDAY }, [id], { reason: 'x', cause: 'sign' });
      return { value: isolated, events: isolated };
    });
    expect(events).toEqual([]);
    expect(await packHistory(db, ours.scope, id)).toMatchObject({ pack: { label: 'W-11', state: 'in-use', revision: 1 } });
    expect(await kinds(db, theirs)).toEqual([]);
  });

  it('does not take an area of the other school for a place', async () => {
    const { db, ours, theirs } = await start();
    const area = await db.area.create({ data: { ...theirs.scope, siteId: theirs.siteId, use: 'storage', name: 'Cupboard', createdAt: MONDAY } });
    const id = await entered(db, ours);
    expect(await enter(db, ours, input({ label: 'W-12', areaId: area.id }))).toMatchObject({ ok: false, faults: [{ field: 'areaId' }] });
    expect(await changePackDetails(db, member(ours), MONDAY, id, command({ areaId: area.id }))).toMatchObject({ ok: false, faults: [{ field: 'areaId' }] });
  });

  it('keeps who of two changed it first, and tells the second', async () => {
    const { db, ours } = await start();
    const id = await entered(db, ours);
    expect(await changePackDetails(db, member(ours), later(1), id, command({ maker: 'Tern' }))).toEqual({ ok: true });
    expect(await changePackDetails(db, member(ours), later(1), id, command({ maker: 'Swift' }))).toMatchObject({ ok: false, faults: [{ message: expect.stringContaining('Somebody else changed this pack') as string }] });
    expect(await packHistory(db, ours.scope, id)).toMatchObject({ pack: { maker: 'Tern', revision: 2 } });
    const both = await Promise.all(['A', 'B'].map((maker) => changePackDetails(db, member(ours), later(2), id, command({ maker }, 2))));
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
  });

  it('keeps a check as it was made, and isolates in the same step', async () => {
    const { db, ours } = await start();
    const id = await entered(db, ours);
    expect(await recordCheck(db, member(ours), later(1), check(id))).toMatchObject({ ok: true });
    const bad = await recordCheck(db, member(ours), later(2), check(id, { swollen: true, cellSpread: { missing: 'not measured' } }));
    const history = await packHistory(db, ours.scope, id);
    expect(history).toMatchObject({
      pack: { state: 'isolated', stateReason: 'Check: swollen, not growing', stateSince: later(2) },
      checks: [{ result: { verdict: 'isolate', fired: [{ id: 'swollen' }] }, measures: { cellSpread: { missing: 'not measured' } }, cellVolts: [3.8, 3.81, null, 3.79] }, { result: { verdict: 'fit' } }],
      changes: [{ from: 'in-use', to: 'isolated', cause: 'sign', placeNow: null, checkId: bad.ok ? bad.checkId : '' }, { to: 'in-use' }],
    });
    expect(await kinds(db, ours)).toEqual(['pack.added', 'pack.checked', 'pack.checked', 'pack.state-changed']);
    expect(await listPacks(db, ours.scope)).toMatchObject([{ isolatedAt: null, isolatedSince: later(2), lastCheck: { result: { verdict: 'isolate' } } }]);
  });

  it('loses no check when two are made at the same moment', async () => {
    const { db, ours } = await start();
    const id = await entered(db, ours);
    const made = await Promise.all([check(id, { swollen: true }), check(id, { smell: true }), check(id)].map((one) => recordCheck(db, member(ours), later(1), one)));
    expect(made.map(({ ok }) => ok)).toEqual([true, true, true]);
    expect(await packHistory(db, ours.scope, id)).toMatchObject({ pack: { state: 'isolated' } });
    expect((await packHistory(db, ours.scope, id))?.checks).toHaveLength(3);
    expect(await verifyLog(db, ours.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('says where an isolated pack is, releases it by the rules, and hands it over once', async () => {
    const { db, ours } = await start();
    const officer = member(ours);
    const id = await entered(db, ours);
    const move = (to: 'isolated' | 'watch' | 'handed-over', at: Date, by: Member = officer) => changePackState(db, by, at, LIMITS, { packId: id, to, reason: 'lay beside W-07', cause: 'nearby', collectedBy: 'Collection point', receiverName: 'A. B.' });
    expect(await move('isolated', later(1))).toEqual({ ok: true });
    expect(await placeIsolatedPack(db, officer, later(2), LIMITS, { packId: id, placeNow: 'outdoor-spot', placeNote: 'by the wall', inSand: 'yes' })).toEqual({ ok: true });
    expect(await listPacks(db, ours.scope)).toMatchObject([{ isolatedAt: 'outdoor-spot', isolatedSince: later(1), pack: { stateSince: later(1) } }]);
    await recordCheck(db, officer, later(30), check(id));
    expect(await move('watch', later(31), { ...officer, role: 'organiser' })).toMatchObject({ ok: false });
    expect(await move('watch', later(31))).toEqual({ ok: true });
    expect(await move('isolated', later(40))).toEqual({ ok: true });
    expect(await move('handed-over', later(41))).toEqual({ ok: true });
    expect(await move('handed-over', later(42))).toMatchObject({ ok: false });
    expect(await recordCheck(db, officer, later(43), check(id))).toMatchObject({ ok: false });
    expect(await db.handOver.findMany({ where: ours.scope, include: { packs: true } })).toMatchObject([{ receiverName: 'A. B.', packs: [{ packId: id }] }]);
    expect((await kinds(db, ours)).filter((kind) => kind === 'pack.released')).toHaveLength(1);
    expect(await verifyLog(db, ours.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('writes nothing at all when the log refuses', async () => {
    const { db, ours } = await start();
    await db.auditHead.delete({ where: { schoolId: ours.scope.schoolId } });
    await expect(entered(db, ours)).rejects.toThrow();
    expect(await listPacks(db, ours.scope)).toEqual([]);
  });

  it('isolates packs for an incident in the incident’s own transaction, one that is isolated already for the graver cause too', async () => {
    const { db, ours } = await start();
    const by = member(ours);
    const [one, two] = [await entered(db, ours), await entered(db, ours, { label: 'W-12' })];
    const isolate = (ids: readonly string[], cause: 'nearby' | 'sign') => recordChange(db, by, later(1), async (tx) => {
      const events = await isolatePacks({ tx, scope: ours.scope, by, at: later(1) }, ids, { reason: 'Incident 26-01', cause });
      return { value: events.length, events };
    });
    expect(await isolate([one, two, 'of-nobody'], 'nearby')).toBe(2);
    expect(await isolate([one], 'sign')).toBe(1);
    const history = await packHistory(db, ours.scope, one);
    expect(history).toMatchObject({ pack: { state: 'isolated' }, changes: [{ from: 'isolated', cause: 'sign' }, { from: 'in-use', cause: 'nearby' }, { from: null }] });
  });
});
