import stdlibChiSquare from '@stdlib/stats-base-dists-chisquare-quantile';
import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { poissonLimits, rateLimits, shareLimits } from '@/lib/core/statistics/exact-limits';
import { expectWithin } from '@/tests/support/expect-within';

describe('poissonLimits', () => {
  // REFERENCES E.1, all rows, CALC with SciPy
  it.each([
    [0, 0, 3.688879], [1, 0.025318, 5.571643], [2, 0.242209, 7.224688], [3, 0.618672, 8.767273], [4, 1.089865, 10.241589],
    [5, 1.623486, 11.668332], [6, 2.201894, 13.059474], [7, 2.814363, 14.422675], [8, 3.453832, 15.763189],
    [9, 4.115373, 17.084803], [10, 4.795389, 18.390356], [12, 6.200575, 20.961585],
  ])('gives the 95 %% limits of %i events', (events, low, high) => {
    const limits = poissonLimits(events, 0.95);
    expectWithin(limits.low, low, { abs: 6e-7 });
    expectWithin(limits.high, high, { abs: 6e-7 });
  });

  // CK-22, printed in R manuals and public tests (READ-P). The printed figures carry an iteration error of
  // about 3e-5, so no tighter tolerance can hold
  it.each([
    [5, 1.62348, 11.66833], [7, 2.814358, 14.42268], [10, 4.795389, 18.39036], [12, 6.200575, 20.96159],
  ])('agrees with the printed limits of %i events', (events, low, high) => {
    expectWithin(poissonLimits(events, 0.95).low, low, { abs: 5e-5 });
    expectWithin(poissonLimits(events, 0.95).high, high, { abs: 5e-5 });
  });
  it('is 3.689 above when nothing was seen (CK-22, READ-P)', () => {
    // the value keeps three decimals in print, the tolerance of the row does not apply to it
    expectWithin(poissonLimits(0, 0.95).high, 3.689, { abs: 5e-4 });
  });

  // REFERENCES E.1, 90 % limits, CALC
  it.each([[0, 0, 2.9957], [1, 0.0513, 4.7439], [5, 1.9701, 10.513], [10, 5.4254, 16.9622]])('gives the 90 %% limits of %i events', (events, low, high) => {
    expectWithin(poissonLimits(events, 0.9).low, low, { abs: 5e-5 });
    expectWithin(poissonLimits(events, 0.9).high, high, { abs: 5e-5 });
  });

  it('agrees with the chi-square form of a second library', () => {
    for (const events of [1, 2, 7, 40, 300]) {
      expectWithin(poissonLimits(events, 0.95).low, stdlibChiSquare(0.025, 2 * events) / 2, { rel: 1e-9 });
      expectWithin(poissonLimits(events, 0.95).high, stdlibChiSquare(0.975, 2 * events + 2) / 2, { rel: 1e-9 });
    }
  });

  it('holds the count between its limits, wider for more confidence', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 500 }), (events) => {
      const narrow = poissonLimits(events, 0.9);
      const wide = poissonLimits(events, 0.99);
      expect(wide.low).toBeLessThanOrEqual(narrow.low);
      expect(narrow.low).toBeLessThanOrEqual(events);
      expect(narrow.high).toBeGreaterThan(events);
      expect(wide.high).toBeGreaterThan(narrow.high);
    }));
  });

  it.each([-1, 1.5, Number.NaN])('counts whole events only, not %f', (events) => {
    expect(() => poissonLimits(events, 0.95)).toThrow('counted');
  });
  it.each([0, 1])('has no limits at a confidence of %i', (confidence) => {
    expect(() => poissonLimits(3, confidence)).toThrow('confidence');
  });
});

describe('rateLimits', () => {
  // remembered as an example of NUREG/CR-6823 (MEM M), figures CALC
  it('gives 0.904 to 2.83 a year for 10 events in 6 years, 90 %', () => {
    const { low, high } = rateLimits(10, 6, 0.9);
    expectWithin(low, 0.904, { abs: 5e-4 });
    expectWithin(high, 2.83, { abs: 5e-3 });
  });
  it('needs an exposure', () => expect(() => rateLimits(1, 0, 0.95)).toThrow('exposure'));
});

describe('shareLimits', () => {
  // CK-23, tests of a statistics library after R 3.6.2 (READ-P)
  it('gives the limits of 20 of 100 at 95 % and of 3 of 50 at 99 %', () => {
    expectWithin(shareLimits(20, 100, 0.95).low, 0.1266555521019559, { abs: 1e-8 });
    expectWithin(shareLimits(20, 100, 0.95).high, 0.2918426890886281, { abs: 1e-8 });
    expectWithin(shareLimits(3, 50, 0.99).low, 0.006872485, { abs: 1e-8 });
    expectWithin(shareLimits(3, 50, 0.99).high, 0.202706269, { abs: 1e-8 });
  });
  it('gives the same one-sided limits at twice the tail', () => {
    expectWithin(shareLimits(20, 100, 0.9).high, 0.2772002496709138, { abs: 1e-12 });
    expectWithin(shareLimits(20, 100, 0.9).low, 0.1366613252458672, { abs: 1e-12 });
  });
  // NIST e-Handbook 7.2.4.1 (set-up MEM, figures CALC: the remembered ones did not survive recomputation)
  it('gives 0.071354 to 0.401028 for 4 of 20 at 90 %', () => {
    expectWithin(shareLimits(4, 20, 0.9).low, 0.071354, { abs: 5e-7 });
    expectWithin(shareLimits(4, 20, 0.9).high, 0.401028, { abs: 5e-7 });
  });
  it('has closed forms for none and for all', () => {
    expectWithin(shareLimits(0, 10, 0.95).high, 1 - 0.025 ** 0.1, { rel: 1e-12 });
    expectWithin(shareLimits(0, 10, 0.95).high, 0.3085, { abs: 5e-5 }); // READ-P
    expectWithin(shareLimits(10, 10, 0.95).low, 0.025 ** 0.1, { rel: 1e-12 });
    expect([shareLimits(0, 10, 0.95).low, shareLimits(10, 10, 0.95).high]).toEqual([0, 1]);
  });
  it('agrees with a second library, whose inverse beta is good to 1e-9 only', () => {
    for (const [hits, trials] of [[1, 7], [20, 100], [499, 500], [30, 2900]] as const) {
      expectWithin(shareLimits(hits, trials, 0.95).low, jstat.jStat.beta.inv(0.025, hits, trials - hits + 1), { rel: 1e-7 });
      expectWithin(shareLimits(hits, trials, 0.95).high, jstat.jStat.beta.inv(0.975, hits + 1, trials - hits), { rel: 1e-7 });
    }
  });
  it('mirrors hits and misses', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(), (trials, seed) => {
      const hits = seed % (trials + 1);
      expectWithin(shareLimits(hits, trials, 0.95).low, 1 - shareLimits(trials - hits, trials, 0.95).high, { abs: 1e-12 });
    }));
  });
  it.each([[3, 2], [-1, 2], [0, 0], [0.5, 2]])('has no limits for %f of %f', (hits, trials) => {
    expect(() => shareLimits(hits, trials, 0.95)).toThrow('counted');
  });
});
