import stdlibChiSquare from '@stdlib/stats-base-dists-chisquare-quantile';
import stdlibGamma from '@stdlib/stats-base-dists-gamma-quantile';
import fc from 'fast-check';
import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile, gammaQuantile, gammaShapeOf } from '@/lib/core/statistics/gamma';
import { incompleteGamma } from '@/lib/core/statistics/incomplete-gamma';
import { logGamma } from '@/lib/core/statistics/log-gamma';
import { expectWithin } from '@/tests/support/expect-within';

const shapes = fc.double({ min: 0.05, max: 2000, noNaN: true });

describe('logGamma', () => {
  it('is the logarithm of the factorial at whole numbers', () => {
    let factorial = 1;
    for (let n = 1; n < 20; n += 1) {
      factorial *= n;
      expectWithin(logGamma(n + 1), Math.log(factorial), { abs: 1e-13 });
    }
  });
  it('is ½·ln π at one half', () => expectWithin(logGamma(0.5), Math.log(Math.PI) / 2, { rel: 1e-14 }));
  it('is not used at zero or below', () => expect(() => logGamma(0)).toThrow('above 0'));
});

describe('incompleteGamma', () => {
  it('is the exponential distribution for shape 1', () => {
    for (const x of [0.01, 0.5, 1.9, 2.1, 30]) {
      expectWithin(incompleteGamma(1, x).lower, -Math.expm1(-x), { rel: 1e-14 });
      expectWithin(incompleteGamma(1, x).upper, Math.exp(-x), { rel: 1e-13 });
    }
  });
  it('has two parts that make one', () => {
    fc.assert(fc.property(shapes, fc.double({ min: 0, max: 5000, noNaN: true }), (a, x) => {
      const { lower, upper } = incompleteGamma(a, x);
      expectWithin(lower + upper, 1, { abs: 1e-15 });
      expect(Math.min(lower, upper)).toBeGreaterThanOrEqual(0);
    }));
  });
});

describe('gammaQuantile', () => {
  // CK-28: documentation of a statistics library (READ-P); more digits CALC
  it('gives 2.994 for 0.8 of shape 2, rate 1, and 1.836 for the median of shape 4, rate 2', () => {
    expectWithin(gammaQuantile(0.8, 2, 1), 2.994, { abs: 1e-3 });
    expectWithin(gammaQuantile(0.8, 2, 1), 2.994308, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.5, 4, 2), 1.836, { abs: 1e-3 });
    expectWithin(gammaQuantile(0.5, 4, 2), 1.83603, { abs: 5e-7 });
  });

  it('agrees with two second libraries', () => {
    for (const shape of [0.4395, 0.8329, 1, 2.5, 11, 140]) {
      for (const p of [1e-4, 0.025, 0.05, 0.5, 0.95, 0.975, 0.9999]) {
        expectWithin(gammaQuantile(p, shape, 3), stdlibGamma(p, shape, 3), { rel: 1e-10 });
        expectWithin(gammaQuantile(p, shape, 3), jstat.jStat.gamma.inv(p, shape, 1 / 3), { rel: 1e-7 });
      }
    }
  });

  it('undoes the distribution function', () => {
    fc.assert(fc.property(shapes, fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (shape, p) => {
      expectWithin(incompleteGamma(shape, gammaQuantile(p, shape, 1)).lower, p, { rel: 1e-10 });
    }));
  });

  it('rises with the probability and falls with the rate', () => {
    fc.assert(fc.property(shapes, fc.double({ min: 0.001, max: 0.9, noNaN: true }), (shape, p) => {
      expect(gammaQuantile(p + 0.05, shape, 1)).toBeGreaterThan(gammaQuantile(p, shape, 1));
      expectWithin(gammaQuantile(p, shape, 4), gammaQuantile(p, shape, 1) / 4, { rel: 1e-12 });
    }));
  });

  // REFERENCES E.2, CALC: prior Γ(2, 10) with 3 events in 20, and Jeffreys' prior with none
  it('gives the limits of a rate that has learnt', () => {
    expectWithin(gammaQuantile(0.05, 5, 30), 0.065672, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.95, 5, 30), 0.305117, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.05, 0.5, 1), 0.001966, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.5, 0.5, 1), 0.227468, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.95, 0.5, 1), 1.920729, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.975, 0.5, 1), 2.511943, { abs: 5e-7 });
  });

  it.each([[0, 1, 1], [1, 1, 1], [0.5, 0, 1], [0.5, 1, 0]])('has no value for p %f, shape %f, rate %f', (p, shape, rate) => {
    expect(() => gammaQuantile(p, shape, rate)).toThrow('no gamma quantile');
  });
});

describe('chiSquareQuantile', () => {
  // any table of χ² (REFERENCES E.2, CALC and MEM H)
  it.each([
    [0.95, 1, 3.8415], [0.95, 2, 5.9915], [0.95, 3, 7.8147], [0.95, 4, 9.4877], [0.95, 5, 11.0705], [0.95, 10, 18.307],
    [0.99, 1, 6.6349], [0.99, 5, 15.0863], [0.99, 10, 23.2093],
  ])('%f with %i degrees of freedom is %f', (p, degrees, expected) => {
    expectWithin(chiSquareQuantile(p, degrees), expected, { abs: 5e-5 });
    expectWithin(chiSquareQuantile(p, degrees), stdlibChiSquare(p, degrees), { rel: 1e-12 });
  });
});

describe('gammaShapeOf', () => {
  // amendment A8, computed there
  it('is 0.439524 for an error factor of 10 and 0.832925 for 5', () => {
    expectWithin(gammaShapeOf(10), 0.439524, { abs: 5e-7 });
    expectWithin(gammaShapeOf(5), 0.832925, { abs: 5e-7 });
  });

  it('makes P95 the error factor times the median', () => {
    fc.assert(fc.property(fc.double({ min: 1.01, max: 1e6, noNaN: true }), (factor) => {
      const shape = gammaShapeOf(factor);
      expectWithin(gammaQuantile(0.95, shape, 1) / gammaQuantile(0.5, shape, 1), factor, { rel: 1e-11 });
    }), { numRuns: 30 });
  });

  it.each([1, 0.5, 1e7, Number.NaN])('refuses an error factor of %f', (factor) => {
    expect(() => gammaShapeOf(factor)).toThrow('error factor');
  });
});
