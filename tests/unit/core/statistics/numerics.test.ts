import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '@/lib/core/statistics/find-root';
import { incompleteBeta } from '@/lib/core/statistics/incomplete-beta';
import { polynomial } from '@/lib/core/statistics/polynomial';
import { simpson } from '@/lib/core/statistics/simpson';
import { expectWithin } from '@/tests/support/expect-within';

describe('simpson', () => {
  it('is exact for a cubic', () => expectWithin(simpson((x) => x ** 3 - 2 * x, 0, 2, 2), 0, { abs: 1e-15 }));
  it('gives the area of a half wave', () => expectWithin(simpson(Math.sin, 0, Math.PI, 200), 2, { rel: 1e-8 }));
  it.each([0, 3, 2.5, -2])('refuses %f intervals', (intervals) => expect(() => simpson(Math.sin, 0, 1, intervals)).toThrow('even number'));
});

describe('polynomial', () => {
  it('reads coefficients from the highest power down', () => expect(polynomial([2, 0, -1], 3)).toBe(17));
});

describe('findRoot', () => {
  it('finds the root of a polynomial to the last digits', () => expectWithin(findRoot((x) => x * x - 2, 0, 2), Math.SQRT2, { rel: 5e-16 }));
  it('takes an end that is a root', () => {
    expect(findRoot((x) => x, 0, 1)).toBe(0);
    expect(findRoot((x) => x - 1, 0, 1)).toBe(1);
  });
  it('finds a root where the function is flat and then steep', () => {
    expectWithin(findRoot((x) => (x - 0.3) ** 9, 0, 1), 0.3, { abs: 0.02 });
    expectWithin(findRoot((x) => Math.exp(40 * x) - Math.exp(30), 0, 1), 0.75, { rel: 1e-14 });
  });
  it('finds any root of a rising cubic', () => {
    fc.assert(fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (root) =>
      expectWithin(findRoot((x) => (x - root) + (x - root) ** 3, -60, 70), root, { abs: 1e-13 })));
  });
  it('refuses ends of one sign', () => expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow('change of sign'));
});

describe('incompleteBeta', () => {
  it('is x^a for b = 1 and 1 − (1 − x)^b for a = 1', () => {
    for (const x of [0.01, 0.3, 0.7, 0.99]) {
      expectWithin(incompleteBeta(x, 3.5, 1), x ** 3.5, { rel: 1e-13 });
      expectWithin(incompleteBeta(x, 1, 2.5), 1 - (1 - x) ** 2.5, { rel: 1e-12 });
    }
  });
  it('is 0 and 1 at the ends', () => expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]));
});
