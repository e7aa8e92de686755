import { describe, expect, it } from 'vitest';
import { heatCase } from '@/lib/core/heat/screening';
import { expectSameTree } from '@/tests/support/expect-same-tree';
import { model } from '@/tests/support/physics';
import { expectedOf, REFERENCE_VENUES } from '@/tests/support/reference-venues';

/** Packs of a lot on charge, read off each venue's answers by hand (as for its smoke); all have 4S 850 mAh packs. */
const LOT = { 'good-hall': 1, 'ordinary-classroom': 4, 'bad-store': 4, everything: 4 } as const;
const PACK_WH = 4 * 0.85 * 3.7;

describe.each(REFERENCE_VENUES)('the heat of %s', (venue) => {
  it('agrees with the independent implementation to 1e-9, for one pack and a lot', () => {
    expectSameTree(heatCase(model, 1, PACK_WH), expectedOf(venue).heat.one, 1e-9);
    expectSameTree(heatCase(model, LOT[venue], PACK_WH), expectedOf(venue).heat.lot, 1e-9);
  });
});

describe('heatCase', () => {
  it('rises from low to high in everything it shows', () => {
    const { low, mid, high } = heatCase(model, 3, 20);
    for (const key of ['Q_kW', 'flameHeight', 'ignitionDistance', 'painDistance'] as const) {
      expect(mid[key]).toBeGreaterThan(low[key]);
      expect(high[key]).toBeGreaterThan(mid[key]);
    }
  });
});
