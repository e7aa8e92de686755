import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clippedPowerMean, logSpread } from '@/lib/core/statistics/clipped-lognormal';
import { normalQuantile } from '@/lib/core/statistics/normal';
import { normalCdf } from '@/lib/core/statistics/normal-cdf';
import { simpson } from '@/lib/core/statistics/simpson';
import { expectWithin } from '@/tests/support/expect-within';

const medians = fc.double({ min: 0.001, max: 1, noNaN: true });
const factors = fc.double({ min: 1.01, max: 100, noNaN: true });

/** The same mean by brute force: the lognormal part below the clip by Simpson, the clipped part as it is. */
function meanByIntegral(median: number, errorFactor: number, power: number): number {
  const s = logSpread(errorFactor);
  const clip = -Math.log(median) / s;
  const density = (z: number): number => (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * (median * Math.exp(s * z)) ** power;
  const from = Math.min(-12, clip - 1);
  return simpson(density, from, Math.min(clip, 14), 20_000) + normalCdf(-clip);
}

describe('clippedPowerMean', () => {
  it.each([[0.2, 3, 1], [0.2, 3, 0.5], [0.01, 10, 1], [0.9, 10, 1], [1, 5, 1], [0.5, 2, 0.37]])(
    'is the mean of min(1, X)^u for median %f, error factor %f, u %f',
    (median, errorFactor, power) => expectWithin(clippedPowerMean(median, errorFactor, power), meanByIntegral(median, errorFactor, power), { rel: 1e-10 }),
  );

  it('is a plain power for an error factor of exactly 1 (amendment A48)', () => {
    expect(clippedPowerMean(0.25, 1, 0.5)).toBe(0.5);
    expectWithin(clippedPowerMean(0.25, 1 + 1e-9, 0.5), 0.5, { rel: 1e-8 });
  });

  it('is 1 for the power 0, whatever the control', () => {
    fc.assert(fc.property(medians, factors, (median, factor) => expectWithin(clippedPowerMean(median, factor, 0), 1, { abs: 1e-15 })));
  });

  it('falls as the power rises and stays between 0 and 1', () => {
    fc.assert(fc.property(medians, factors, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (median, factor, u, more) => {
      const [less, full] = [clippedPowerMean(median, factor, u), clippedPowerMean(median, factor, u + more)];
      expect(full).toBeGreaterThan(0);
      expect(full).toBeLessThanOrEqual(less * (1 + 1e-12));
      expect(less).toBeLessThanOrEqual(1 + 1e-12);
    }));
  });

  it('is never the unclipped mean, which would pass 1', () => {
    const s = logSpread(10);
    expect(0.9 * Math.exp((s * s) / 2)).toBeGreaterThan(1);
    expect(clippedPowerMean(0.9, 10, 1)).toBeLessThan(1);
  });

  it.each([0, -0.1, 1.01, Number.NaN])('refuses a median of %f', (median) => {
    expect(() => clippedPowerMean(median, 3, 1)).toThrow('median');
  });
  it('refuses an error factor below 1', () => expect(() => clippedPowerMean(0.1, 0.5, 1)).toThrow('error factor'));
});

describe('logSpread', () => {
  it('puts the 95th percentile at the error factor times the median', () => {
    expectWithin(Math.exp(logSpread(7) * normalQuantile(0.95)), 7, { rel: 1e-14 });
  });
});
