import stdlibCdf from '@stdlib/stats-base-dists-normal-cdf';
import stdlibQuantile from '@stdlib/stats-base-dists-normal-quantile';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '@/lib/core/statistics/normal';
import { normalCdf } from '@/lib/core/statistics/normal-cdf';
import { expectWithin } from '@/tests/support/expect-within';

const probability = fc.double({ min: 1e-300, max: 1 - 1e-15, noNaN: true });

describe('normalCdf', () => {
  // computed with mpmath at 40 digits, ½·erfc(−z/√2)
  it.each([
    [-37, 5.725571222524577e-300], [-20, 2.7536241186062337e-89], [-8, 6.220960574271784e-16], [-5.7, 5.990371401063528e-9],
    [-5.6, 1.0717590258310929e-8], [-3, 0.0013498980316300945], [-0.7, 0.24196365222307303], [-0.6, 0.2742531177500736],
    [0.5, 0.6914624612740131], [1.6448536269514722, 0.95], [3, 0.9986501019683699],
  ])('keeps its digits at %f, also deep in the tail', (z, expected) => expectWithin(normalCdf(z), expected, { rel: 2e-15 }));

  it('agrees with a second library from −20 to 9', () => {
    for (let z = -20; z <= 9; z += 0.0625) expectWithin(normalCdf(z), stdlibCdf(z, 0, 1), { rel: 5e-14 });
  });

  it('is 0, a half and 1 at the ends and in the middle', () => {
    expect([normalCdf(Number.NEGATIVE_INFINITY), normalCdf(0), normalCdf(Number.POSITIVE_INFINITY)]).toEqual([0, 0.5, 1]);
  });

  it('never falls', () => {
    fc.assert(fc.property(fc.double({ min: -40, max: 40, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true }), (z, more) =>
      normalCdf(z + more) >= normalCdf(z)));
  });
});

describe('normalQuantile', () => {
  it('gives the 95th percentile that error factors are made with', () => {
    expectWithin(normalQuantile(0.95), 1.6448536269514722, { rel: 1e-15 });
  });

  // computed with mpmath at 40 digits
  it.each([[1e-300, -37.0470962993612], [1e-50, -14.93333753478849], [1e-12, -7.034483825301132], [1e-5, -4.264890793922825]])(
    'keeps its digits at %f',
    (p, expected) => expectWithin(normalQuantile(p), expected, { rel: 2e-15 }),
  );

  it('agrees with a second library, which loses digits further out', () => {
    for (const p of [0.0025, 0.07, 0.3, 0.6, 0.93, 0.9999]) {
      expectWithin(normalQuantile(p), stdlibQuantile(p, 0, 1), { rel: 1e-14 });
    }
  });

  it('undoes the distribution function', () => {
    fc.assert(fc.property(probability, (p) => {
      // an error ε in z moves p by φ(z)·ε, which in the tail is z·ε of p itself
      const z = normalQuantile(p);
      expectWithin(normalCdf(z), p, { rel: 4e-15 * (1 + z * z) });
    }));
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('has no value for %f', (p) => {
    expect(() => normalQuantile(p)).toThrow('between 0 and 1');
  });
});
