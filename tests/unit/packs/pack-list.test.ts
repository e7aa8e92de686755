import { describe, expect, it } from 'vitest';
import { spreadTrend } from '@/lib/packs/checks/spread-trend';
import { signWords } from '@/lib/packs/checks/verdict-words';
import { addPacks, changePack } from '@/lib/packs/change-pack';
import { copyPack, detailsOf } from '@/lib/packs/copy-pack';
import { filteredPacks, type ListedPack, needOf, readPackFilter } from '@/lib/packs/pack-list';
import { PackInputSchema } from '@/lib/packs/pack-input';
import { DAY_MS } from '@/lib/units/time';
import { checkForTest, later, MONDAY, packForTest } from '@/tests/support/pack-for-tests';
import { secondLimits } from '@/tests/support/second-pack-limits';

const listed = (given: Partial<ListedPack>): ListedPack => ({ pack: packForTest(), lastCheck: checkForTest(MONDAY), isolatedAt: null, isolatedSince: null, ...given });
const isolated = packForTest({ state: 'isolated' });
const INPUT = PackInputSchema.parse({ label: 'W-11', series: '4', capacityMah: '850', cellType: 'full-4-20', secondHand: 'no' });

describe('what a pack needs', () => {
  it.each([
    ['nothing when its check was fit', listed({}), null],
    ['a check when there was none', listed({ lastCheck: null }), { urgency: 'wait', words: 'Not checked yet' }],
    ['what its signs stop', listed({ lastCheck: checkForTest(MONDAY, { cellSpread: 0.12 }) }), { urgency: 'wait', words: 'Do not fly' }],
    ['somebody now, while nobody has said where it is', listed({ pack: isolated, isolatedSince: MONDAY }), { urgency: 'now', words: 'Say where it is' }],
    ['somebody now, when it still lies where it was', listed({ pack: isolated, isolatedAt: 'left', isolatedSince: MONDAY }), { urgency: 'now', words: 'Not at the outdoor spot' }],
    ['patience at the outdoor spot', listed({ pack: isolated, isolatedAt: 'outdoor-spot', isolatedSince: MONDAY }), { urgency: 'wait', words: 'Waits 3 days for collection' }],
    ['nothing any more when it was handed over', listed({ pack: packForTest({ state: 'handed-over' }) }), null],
  ])('is %s', (_, pack, need) => { expect(needOf(secondLimits, pack, later(75))).toEqual(need); });

  it('becomes urgent when it waits longer than a week', () => {
    const waiting = listed({ pack: isolated, isolatedAt: 'outdoor-spot', isolatedSince: MONDAY });
    expect(needOf(secondLimits, waiting, later(24 * 7))?.urgency).toBe('wait');
    expect(needOf(secondLimits, waiting, later(24 * 8))?.urgency).toBe('now');
  });
});

describe('the list', () => {
  const packs = [listed({ pack: packForTest({ label: 'W-10' }) }), listed({ pack: packForTest({ label: 'W-2' }) }), listed({ pack: packForTest({ label: 'S-1', state: 'isolated', batch: 'Blue' }) }), listed({ pack: packForTest({ label: 'A-1', state: 'handed-over' }) })];
  const labels = (query: Parameters<typeof readPackFilter>[0]) => filteredPacks(secondLimits, packs, readPackFilter(query), MONDAY).map(({ pack }) => pack.label);

  it('shows what is here, what presses first, numbers as numbers', () => { expect(labels({})).toEqual(['S-1', 'W-2', 'W-10']); });
  it('finds by part of label or batch, and shows those that left when asked', () => {
    expect(labels({ find: 'blue' })).toEqual(['S-1']);
    expect(labels({ find: 'w-1' })).toEqual(['W-10']);
    expect(labels({ state: 'all' })).toHaveLength(4);
    expect(labels({ state: 'handed-over' })).toEqual(['A-1']);
  });
  it('takes an address it does not know for no filter', () => { expect(readPackFilter({ state: 'burning', find: ['x', 'y'] })).toEqual({ find: 'x', state: null }); });
});

describe('the trend of the cell spread', () => {
  const checks = (spreads: readonly number[]) => spreads.map((cellSpread, at) => checkForTest(new Date(MONDAY.getTime() + at * 30 * DAY_MS), { cellSpread }));

  it('is shown only when it can be told from chance', () => {
    const rising = spreadTrend(checks([0.01, 0.02, 0.03, 0.04, 0.05, 0.06]));
    // Computed: 10 mV in 30 days are 10.1 mV in a month of 365.25/12 days.
    expect(rising).toMatchObject({ trend: 'rising', words: expect.stringContaining('drift apart by 10.1 mV a month') as string });
    expect(spreadTrend(checks([0.01, 0.02, 0.01, 0.02, 0.01, 0.015])).trend).toBe('not shown');
    expect(spreadTrend(checks([0.01, 0.09]))).toMatchObject({ trend: 'too few', mvAMonth: null });
    expect(spreadTrend([0.01, 0.02, 0.03, 0.04, 0.05, 0.4].map((cellSpread, at) => checkForTest(later(at), { cellSpread })))).toMatchObject({ trend: 'too few', words: '6 checks within two weeks: too close together to tell a trend.' });
    expect(spreadTrend([])).toMatchObject({ trend: 'too few', points: [] });
  });

  it('leaves out checks that measured no cells', () => {
    expect(spreadTrend([...checks([0.01]), checkForTest(MONDAY, { cellSpread: { missing: 'no meter' } })]).points).toHaveLength(1);
  });
});

describe('a sign in words', () => {
  it('gives figure and limit in the units people read', () => {
    const words = (given: Parameters<typeof checkForTest>[1], unit: '°C' | '°F' = '°C') => checkForTest(MONDAY, given).result.fired.map((rule) => signWords(rule, secondLimits, unit));
    expect(words({ cellSpread: 0.32 })[0]).toContain(': 320 mV, limit 300 mV');
    expect(words({ cellMin: 2.9 })[0]).toContain(': 2.90 V, limit 3.00 V');
    expect(words({ temperatureRise: 10 })[0]).toContain(': 10 °C, limit 10 °C');
    expect(words({ temperatureRise: 10 }, '°F')[0]).toContain(': 18 °F, limit 18 °F');
    expect(words({ smell: 'not sure' })[0]).toContain('not sure, which counts as the sign');
    expect(words({ swollen: true })[0]).toBe('swollen, not growing');
  });
});

describe('packs on their way into the register', () => {
  it('are refused with a day to come, or a label that is taken, all together', () => {
    expect(addPacks([INPUT, { ...INPUT, label: 'w-11' }], [], '2026-11-25')).toMatchObject({ ok: false, faults: [{ field: 'label' }] });
    expect(addPacks([INPUT], ['W-11'], '2026-11-25')).toMatchObject({ ok: false });
    expect(addPacks([{ ...INPUT, boughtOn: '2026-11-26' }], [], '2026-11-25')).toMatchObject({ ok: false, faults: [{ field: 'boughtOn', message: 'This day has not come yet' }] });
    expect(addPacks([INPUT], [], '2026-11-25')).toMatchObject({ ok: true });
  });

  it('are copied without what belongs to one alone', () => {
    const copied = copyPack(packForTest({ notes: 'wrap renewed' }), 2, ['W-11']);
    expect(copied.ok && copied.change.map(({ label, notes, chargesBefore, firstUsedOn, batch }) => ({ label, notes, chargesBefore, firstUsedOn, batch }))).toEqual([
      { label: 'W-12', notes: null, chargesBefore: null, firstUsedOn: null, batch: 'B-25-09' }, { label: 'W-13', notes: null, chargesBefore: null, firstUsedOn: null, batch: 'B-25-09' },
    ]);
  });

  it('are changed from the revision that was read, and the log keeps what stood there', () => {
    const pack = packForTest();
    const input = { ...INPUT, ...detailsOf(pack), cellType: 'full-4-35' as const, capacityMah: 900 };
    expect(changePack(pack, { input, revision: 1, today: '2026-11-25' }, [])).toMatchObject({ ok: true, events: [{ kind: 'pack.changed', data: { changes: { capacityMah: { from: 850, to: 900 }, cellType: { from: 'full-4-20', to: 'full-4-35' } } } }] });
    expect(changePack(pack, { input, revision: 0, today: '2026-11-25' }, [])).toMatchObject({ ok: false, faults: [{ field: null }] });
    expect(changePack(pack, { input: { ...INPUT, ...detailsOf(pack), cellType: 'full-4-20' }, revision: 1, today: '2026-11-25' }, [])).toMatchObject({ ok: true, events: [] });
  });
});
