import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { discordantPairs, outermostRank } from '@/lib/core/statistics/discordant-pairs';
import { theilSen } from '@/lib/core/statistics/theil-sen';
import { expectWithin } from '@/tests/support/expect-within';

function orders(items: readonly number[]): number[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((first) => orders(items.filter((item) => item !== first)).map((rest) => [first, ...rest]));
}
const discordant = (order: readonly number[]): number =>
  order.reduce((sum, here, index) => sum + order.slice(index + 1).filter((later) => later < here).length, 0);

describe('discordantPairs', () => {
  it.each([1, 2, 3, 4, 5, 6, 7])('counts what all orders of %i things give', (n) => {
    const all = orders(Array.from({ length: n }, (_, index) => index));
    const shares = discordantPairs(n);
    expect(shares).toHaveLength((n * (n - 1)) / 2 + 1);
    shares.forEach((share, pairs) => expectWithin(share, all.filter((order) => discordant(order) === pairs).length / all.length, { abs: 1e-15 }));
  });
  it('still adds up for many checks', () => {
    expectWithin(discordantPairs(120).reduce((sum, share) => sum + share, 0), 1, { abs: 1e-12 });
  });
});

describe('outermostRank', () => {
  it('leaves no 95 % interval for four checks and the outermost slopes for five', () => {
    expect([2, 3, 4].map((n) => outermostRank(n, 0.95))).toEqual([0, 0, 0]);
    expect(outermostRank(5, 0.95)).toBe(1);
  });
  // two-sided 5 % critical values of Kendall's S from a printed table (from memory, MEM M): reached at |S| ≥ value
  it.each([[5, 10], [6, 13], [7, 15], [8, 18], [9, 20], [10, 23]])('agrees with the table of S for %i checks', (n, critical) => {
    const pairs = (n * (n - 1)) / 2;
    expect(outermostRank(n, 0.95) - 1).toBe(Math.floor((pairs - critical) / 2));
  });
  it('counts a chance that is exactly the allowed one', () => {
    // of 6 things one order of 720 has no discordant pair; in floating point that chance comes out a shade above
    expect([outermostRank(5, 1 - 2 / 120), outermostRank(6, 1 - 2 / 720)]).toEqual([1, 1]);
  });
});

describe('theilSen', () => {
  const line = (n: number): { x: number; y: number }[] => Array.from({ length: n }, (_, index) => ({ x: index, y: 3 + 2 * index }));

  it('finds the slope of a straight line, with no width', () => {
    expect(theilSen(line(8), 0.95)).toEqual({ slope: 2, interval: { low: 2, high: 2 } });
  });
  it('is not turned by one wild check', () => {
    const points = line(9).map((point, index) => (index === 4 ? { ...point, y: 500 } : point));
    expect(theilSen(points, 0.95)?.slope).toBe(2);
  });
  it('has a slope but no interval for four checks', () => {
    expect(theilSen(line(4), 0.95)).toEqual({ slope: 2, interval: null });
  });
  it('has nothing to say of one day', () => expect(theilSen([{ x: 1, y: 1 }, { x: 1, y: 2 }], 0.95)).toBeNull());
  it('takes five checks of which two fall on one day as too few', () => {
    expect(theilSen([...line(4), { x: 3, y: 9.1 }], 0.95)?.interval).toBeNull();
  });

  it('covers the true slope in at least 95 of 100 of all orders of the errors', () => {
    const errors = [-2.1, -1.3, -0.4, 0.2, 0.9, 1.7, 3.3];
    const covered = orders([0, 1, 2, 3, 4, 5, 6]).filter((order) => {
      const interval = theilSen(order.map((which, x) => ({ x, y: 5 * x + (errors[which] ?? 0) })), 0.95)?.interval;
      return interval !== null && interval !== undefined && interval.low < 5 && interval.high > 5;
    });
    const share = covered.length / 5040;
    // exact: 1 − 2·P(fewer than r pairs)
    const tail = discordantPairs(7).slice(0, outermostRank(7, 0.95)).reduce((sum, one) => sum + one, 0);
    expectWithin(share, 1 - 2 * tail, { abs: 1e-12 });
    expect(share).toBeGreaterThanOrEqual(0.95);
  });

  it('moves with the points: added slope is added, order is irrelevant', () => {
    const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 5, maxLength: 14 });
    fc.assert(fc.property(values, fc.integer({ min: -20, max: 20 }), (ys, added) => {
      const points = ys.map((y, x) => ({ x, y }));
      const plain = theilSen(points, 0.95);
      const turned = theilSen(points.map(({ x, y }) => ({ x, y: y + added * x })).reverse(), 0.95);
      if (!plain?.interval || !turned?.interval) throw new Error('an interval is expected');
      expectWithin(turned.slope, plain.slope + added, { abs: 1e-9 });
      expectWithin(turned.interval.low, plain.interval.low + added, { abs: 1e-9 });
      expectWithin(turned.interval.high, plain.interval.high + added, { abs: 1e-9 });
      expect(plain.interval.low).toBeLessThanOrEqual(plain.slope);
      expect(plain.interval.high).toBeGreaterThanOrEqual(plain.slope);
    }));
  });
});
