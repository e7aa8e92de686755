import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { burnClass, type BurnExposure, spreadClass, type SpreadExposure } from '@/lib/core/heat/heat-class';
import { model } from '@/tests/support/physics';

const small = { packs: 1, packEnergyWh: 12.58, heatYield: 300 } as const;
const burn = (change: Partial<BurnExposure>): number => burnClass(model, { ...small, personDistanceM: 1, ...change });
const spread = (change: Partial<SpreadExposure>): number =>
  spreadClass(model, { ...small, fuel: 'ordinary', combustibleDistanceM: 1, clearHeightM: 3, ...change });

describe('burnClass', () => {
  it('is 3 within half a metre of one small pack and 4 of several', () => {
    expect([burn({ personDistanceM: 0.5 }), burn({ packs: 2, personDistanceM: 0.5 }), burn({ packs: 2, personDistanceM: 0 })]).toEqual([3, 4, 4]);
  });
  it('is never below 2, because people reach in', () => expect(burn({ personDistanceM: 20 })).toBe(2));
  it('reaches as far as the flame where that is higher than half a metre', () => {
    // three packs of 33.3 Wh at the high yield burn with a flame of about 1 m
    const big = { packs: 3, packEnergyWh: 33.3, heatYield: 490 };
    expect([burn({ ...big, personDistanceM: 0.95 }), burn({ ...big, personDistanceM: 1.2 })]).toEqual([4, 2]);
  });
  it('is 3 from 2.5 and 4 from 5 kW/m² outside the reach', () => {
    // only a fire far stronger than any small pack radiates so much beyond its own flame: the rule is tried with a short flame
    const flat = { ...model, flameBase: { low: 10, mid: 10, high: 10 } };
    const at = (q: number): number => Math.sqrt((model.radiantFraction.mid * 60) / (4 * Math.PI * q));
    const found = [5.001, 4.999, 2.501, 2.499].map((q) => burnClass(flat, { packs: 1, packEnergyWh: 200, heatYield: 300, personDistanceM: at(q) }));
    expect(found).toEqual([4, 3, 3, 2]);
  });
  it('never falls with more packs or energy, nor nearer, for any pack a school may enter', () => {
    const any = fc.record({
      packs: fc.integer({ min: 1, max: 400 }), packEnergyWh: fc.double({ min: 1, max: 200, noNaN: true }),
      heatYield: fc.double({ min: 110, max: 490, noNaN: true }), personDistanceM: fc.double({ min: 0, max: 20, noNaN: true }),
    });
    fc.assert(fc.property(any, fc.double({ min: 0, max: 1, noNaN: true }), (exposure, share) => {
      const today = burnClass(model, exposure);
      const worse: Partial<BurnExposure>[] = [
        { packs: exposure.packs + 1 },
        { packEnergyWh: exposure.packEnergyWh + share * (200 - exposure.packEnergyWh) },
        { heatYield: exposure.heatYield + share * (490 - exposure.heatYield) },
        { personDistanceM: exposure.personDistanceM * share },
      ];
      for (const change of worse) expect(burnClass(model, { ...exposure, ...change }), JSON.stringify(change)).toBeGreaterThanOrEqual(today);
    }), { numRuns: 500 });
  });
});

describe('spreadClass', () => {
  it('is 2, 3 or 4 by what can burn, where nothing is reached', () => {
    expect((['light', 'ordinary', 'heavy'] as const).map((fuel) => spread({ fuel }))).toEqual([2, 3, 4]);
  });
  it('is one more where something touches, is lit by radiation, or hangs in the flame', () => {
    expect(spread({ combustibleDistanceM: 0.05 })).toBe(4);
    expect(spread({ combustibleDistanceM: 0 })).toBe(4);
    // far too weak to light anything from 0.05 m, so here touching alone counts
    const ember = { packEnergyWh: 1, heatYield: 110 };
    expect([spread({ ...ember, combustibleDistanceM: 0.05 }), spread({ ...ember, combustibleDistanceM: 0.051 })]).toEqual([4, 3]);
    // 12.5 kW/m² lies at 0.0917 m from one pack at the middle yield
    expect([spread({ combustibleDistanceM: 0.0916 }), spread({ combustibleDistanceM: 0.0918 })]).toEqual([4, 3]);
    // its flame is 0.2468 m high
    expect([spread({ clearHeightM: 0.2467 }), spread({ clearHeightM: 0.2468 })]).toEqual([4, 3]);
  });
  it('is one more once, also where two of them hold, and never above 5', () => {
    expect(spread({ combustibleDistanceM: 0, clearHeightM: 0.1 })).toBe(4);
    expect(spread({ fuel: 'heavy', combustibleDistanceM: 0, clearHeightM: 0.1 })).toBe(5);
  });
  it('is the base class in arena and vehicle, however many packs burn (amendment A34)', () => {
    expect(spread({ fuel: 'light', packs: 400, packEnergyWh: 200, heatYield: 490, combustibleDistanceM: null, clearHeightM: null })).toBe(2);
  });
  it('takes a distance of nothing and a height of nothing as reached, not as missing', () => {
    expect(spread({ combustibleDistanceM: 5, clearHeightM: 0 })).toBe(4);
  });
});
