import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoPieceLognormal } from '@/lib/core/statistics/two-piece-lognormal';
import { expectWithin } from '@/tests/support/expect-within';

const HF = { low: 20, mid: 100, high: 200 };

describe('twoPieceLognormal', () => {
  it('goes through low, middle and high at the 5th, 50th and 95th percentile', () => {
    expectWithin(twoPieceLognormal(HF, -1.6448536269514722), 20, { rel: 1e-14 });
    expect(twoPieceLognormal(HF, 0)).toBe(100);
    expectWithin(twoPieceLognormal(HF, 1.6448536269514722), 200, { rel: 1e-14 });
  });
  it('is half way between on a logarithmic scale at half of that', () => {
    expectWithin(twoPieceLognormal(HF, 1.6448536269514722 / 2), Math.sqrt(100 * 200), { rel: 1e-14 });
  });
  it('never leaves its range and never falls', () => {
    fc.assert(fc.property(fc.double({ min: -40, max: 40, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (z, more) => {
      const [here, further] = [twoPieceLognormal(HF, z), twoPieceLognormal(HF, z + more)];
      expect(here).toBeGreaterThanOrEqual(20);
      expect(further).toBeLessThanOrEqual(200);
      expect(further).toBeGreaterThanOrEqual(here);
    }));
  });
  it('is a constant when its levels are equal', () => expect(twoPieceLognormal({ low: 3, mid: 3, high: 3 }, 2)).toBe(3));
});
