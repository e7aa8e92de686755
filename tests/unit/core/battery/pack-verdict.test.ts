import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { cellMeasures } from '@/lib/core/battery/cell-measures';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { expectWithin } from '@/tests/support/expect-within';

const limits = edition1.packLimits;
/** A sound pack, everything measured, by the limits of the content (mostly common practice and our judgement). */
const sound: PackMeasures = {
  silentCells: 0, swollen: false, smell: false, dented: false, temperatureRise: 1, cellMin: 3.79, cellMax: 3.81, cellSpread: 0.02,
  resistanceRatio: 1.1, capacityShare: 0.95, tornWrap: false, damagedLead: false, ageMonths: 8, cycles: 60, hoursFull: 0, hoursSinceImpact: 30, hoursSinceUse: 12,
};
const verdictOf = (change: PackMeasures): string | null => packVerdict(limits, { ...sound, ...change }).verdict;

describe('packVerdict of the first edition', () => {
  it('of a sound pack with everything measured is fit, with nothing fired and nothing missing', () => {
    expect(packVerdict(limits, sound)).toEqual({ verdict: 'fit', fired: [], missing: [], blocks: null, incomplete: null, endsAt: null });
  });
  it.each([
    [{ swollen: true }, 'isolate'], [{ smell: true }, 'isolate'], [{ dented: true }, 'isolate'], [{ silentCells: 1 }, 'isolate'],
    [{ temperatureRise: 10 }, 'isolate'], [{ temperatureRise: 9.9 }, 'watch'], [{ temperatureRise: 4.9 }, 'fit'],
    [{ cellMin: 2.99 }, 'isolate'], [{ cellMin: 3 }, 'watch'], [{ cellMin: 3.3 }, 'fit'], [{ cellMax: 4.25 }, 'fit'], [{ cellMax: 4.26 }, 'isolate'],
    [{ cellSpread: 0.3 }, 'isolate'], [{ cellSpread: 0.1 }, 'watch'], [{ cellSpread: 0.099 }, 'fit'],
    [{ resistanceRatio: 2 }, 'retire'], [{ resistanceRatio: 1.5 }, 'watch'], [{ capacityShare: 0.69 }, 'retire'], [{ capacityShare: 0.7 }, 'watch'], [{ capacityShare: 0.8 }, 'fit'],
    [{ tornWrap: true }, 'watch'], [{ damagedLead: true }, 'watch'], [{ ageMonths: 36 }, 'watch'], [{ cycles: 300 }, 'watch'],
    [{ hoursFull: 72 }, 'fit'], [{ hoursFull: 72.1 }, 'watch'], [{ hoursSinceImpact: 0.4 }, 'watch'], [{ hoursSinceUse: 0.3 }, 'watch'],
  ])('with %j is %s', (change, expected) => expect(verdictOf(change)).toBe(expected));

  it('lists every rule that fired, most urgent first, with what was measured and the limit', () => {
    const { verdict, fired } = packVerdict(limits, { ...sound, cellSpread: 0.35, capacityShare: 0.6, ageMonths: 40 });
    expect(verdict).toBe('isolate');
    expect(fired.map(({ id }) => id)).toEqual(['spread-large', 'capacity-gone', 'spread', 'capacity-low', 'old']);
    expect(fired[0]).toMatchObject({ measure: 'cellSpread', measured: 0.35, op: '>=', limit: 0.3, verdict: 'isolate' });
  });
  it('isolates before it retires', () => {
    expect(verdictOf({ resistanceRatio: 3, swollen: true })).toBe('isolate');
  });
  it('names what nobody measured, once each, and fires nothing for it', () => {
    const { verdict, fired, missing } = packVerdict(limits, { swollen: false, cellMin: 3.8, cellMax: undefined });
    expect([verdict, fired]).toEqual(['fit', []]);
    const names = missing.map(({ measure }) => measure);
    expect(names).toEqual(expect.arrayContaining(['silentCells', 'smell', 'cellMax', 'resistanceRatio']));
    expect(names).not.toContain('cellMin');
    expect(new Set(names).size).toBe(names.length);
  });
  it('has no verdict for a pack at which nobody looked', () => {
    expect(packVerdict(limits, {})).toMatchObject({ verdict: null, fired: [] });
    expect(packVerdict(limits, Object.create({ swollen: true }) as PackMeasures).verdict).toBeNull();
  });
  it('refuses a measure of the wrong kind', () => {
    expect(() => packVerdict(limits, { swollen: 1 })).toThrow('swollen');
    expect(() => packVerdict(limits, { cellMin: Number.NaN })).toThrow('finite');
  });
  it('is never made milder by measuring more', () => {
    const names = Object.keys(sound);
    const rank = (verdict: string | null): number => (verdict === null ? -1 : limits.order.findIndex((one) => one === verdict));
    const measures = fc.record({
      cellMin: fc.double({ min: 2, max: 4.3, noNaN: true }), cellSpread: fc.double({ min: 0, max: 0.5, noNaN: true }),
      swollen: fc.boolean(), temperatureRise: fc.double({ min: -5, max: 20, noNaN: true }), resistanceRatio: fc.double({ min: 0.5, max: 3, noNaN: true }),
    });
    fc.assert(fc.property(measures, fc.subarray(names), (found, known) => {
      const some = Object.fromEntries(Object.entries(found).filter(([name]) => known.includes(name)));
      expect(rank(packVerdict(limits, found).verdict)).toBeGreaterThanOrEqual(rank(packVerdict(limits, some).verdict));
    }));
  });
});

describe('cellMeasures', () => {
  it('gives lowest, highest and difference of the cells', () => {
    const measures = cellMeasures([3.81, 3.79, 3.84, 3.8], limits.silentBelow);
    expect(measures).toMatchObject({ silentCells: 0, cellMin: 3.79, cellMax: 3.84 });
    expectWithin(measures.cellSpread ?? Number.NaN, 0.05, { abs: 1e-12 });
  });
  it.each([null, 0, 0.49])('leaves a cell that reads %s out of all three and names it', (silent) => {
    const measures = cellMeasures([3.81, silent, 3.79], limits.silentBelow);
    expect(measures).toMatchObject({ silentCells: 1, cellMin: 3.79, cellMax: 3.81 });
    const { verdict, fired } = packVerdict(limits, { ...sound, ...measures });
    expect([verdict, fired.map(({ id }) => id)]).toEqual(['isolate', ['cell-silent']]);
  });
  it('knows no difference with one reading cell of several, and none at all with none', () => {
    expect(cellMeasures([null, 3.8], 0.5)).toEqual({ silentCells: 1, cellMin: 3.8, cellMax: 3.8, cellSpread: undefined });
    expect(cellMeasures([null, 0], 0.5)).toEqual({ silentCells: 2, cellMin: undefined, cellMax: undefined, cellSpread: undefined });
  });
  it('takes a cell exactly at the silent limit as reading', () => {
    expect(cellMeasures([0.5, 3.8], 0.5)).toMatchObject({ silentCells: 0, cellMin: 0.5 });
  });
  // the limit of edition 2 and of the first: 0.1 V fires at 0.1 V, whatever binary fractions make of 3.8 − 3.7
  it.each([[3.8, 3.7], [3.9, 3.8], [4.2, 4.1]])('of %f V and %f V finds a spread of exactly 0.1 V', (high, low) => {
    expect(cellMeasures([high, low], 0.5).cellSpread).toBe(0.1);
  });
  // worked out: highest minus lowest, as the content defines it
  it('of 3.73 V and 3.41 V finds 0.32 V', () => expect(cellMeasures([3.73, 3.7, 3.41, 3.72], 0.5).cellSpread).toBe(0.32));
  it('takes a pack of one cell as even', () => expect(cellMeasures([3.8], 0.5).cellSpread).toBe(0));
});
