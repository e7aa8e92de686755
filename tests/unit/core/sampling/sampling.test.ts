import gammaQuantile from '@stdlib/stats-base-dists-gamma-quantile';
import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gammaVariate } from '@/lib/core/sampling/gamma-variate';
import { EDGES, LAYER_AREA, normalVariate } from '@/lib/core/sampling/normal-variate';
import { quantilesInPlace } from '@/lib/core/sampling/quantiles';
import { RandomStream } from '@/lib/core/sampling/random-stream';
import { expectWithin } from '../../../support/expect-within';

describe('the random stream', () => {
  it('gives the numbers of the published generator', () => {
    // xoshiro128** from the state 1, 2, 3, 4: first outputs of the reference code, from memory
    const stream = RandomStream.fromState([1, 2, 3, 4]);
    const first = Array.from({ length: 10 }, () => stream.nextUint32());
    expect(first.filter((_, index) => index !== 4)).toEqual([11520, 0, 5927040, 70819200, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804]);
  });

  it('has unrelated lanes and seeds', () => {
    const first = (seed: number, lane: number): string => { const stream = RandomStream.of(seed, lane); return [stream.nextUint32(), stream.nextUint32()].join(); };
    const all = [0, 1, 2, 4_294_967_295].flatMap((seed) => [0, 1, 2].map((lane) => first(seed, lane)));
    expect(new Set(all).size).toBe(12);
  });

  it('stays strictly between zero and one', () => {
    const stream = RandomStream.of(3, 0);
    for (let index = 0; index < 10_000; index += 1) {
      const value = stream.nextOpen();
      expect(value > 0 && value < 1).toBe(true);
    }
  });
});

describe('normal variates', () => {
  it('come from layers that close at zero', () => {
    // the ziggurat's own condition: the last layer ends where the density is 1
    const last = EDGES[127] ?? Number.NaN;
    expectWithin(LAYER_AREA / last + Math.exp(-0.5 * last * last), 1, { abs: 1e-9 });
    expect(EDGES[128]).toBe(0);
  });

  it('have the normal distribution', () => {
    const stream = RandomStream.of(17, 0);
    const sample = Float64Array.from({ length: 200_000 }, () => normalVariate(stream)).sort();
    // Kolmogorov and Smirnov, one sample: 1.95 / √n is passed by chance once in a thousand
    let gap = 0;
    sample.forEach((value, index) => { gap = Math.max(gap, Math.abs((index + 0.5) / sample.length - normalCdf(value, 0, 1))); });
    expect(gap).toBeLessThan(1.95 / Math.sqrt(200_000));
    expect(sample[0]).toBeLessThan(-4);
    expect(sample.at(-1)).toBeGreaterThan(4);
  });
});

describe('gamma variates', () => {
  // shapes of the model: error factors 10 and 5, and two that a record leads to
  it.each([0.439524, 0.832925, 1.439524, 12.3])('have the quantiles of a second library, shape %f', (shape) => {
    const stream = RandomStream.of(23, 0);
    const sample = Float64Array.from({ length: 200_000 }, () => gammaVariate(stream, shape));
    const probabilities = [0.05, 0.25, 0.5, 0.75, 0.95, 0.99];
    quantilesInPlace(sample, probabilities).forEach((value, index) => expectWithin(value, gammaQuantile(probabilities[index] ?? 0, shape, 1), { rel: 0.05 }));
    expect(sample.every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
  });
});

describe('quantiles', () => {
  it('are those of the sorted values', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 300 }), (values) => {
      const sorted = Float64Array.from(values).sort();
      const probabilities = [0, 0.05, 0.5, 0.95, 1];
      const found = quantilesInPlace(Float64Array.from(values), probabilities);
      probabilities.forEach((probability, index) => {
        const position = (sorted.length - 1) * probability;
        const below = sorted[Math.floor(position)] ?? 0;
        const above = sorted[Math.ceil(position)] ?? 0;
        expectWithin(found[index] ?? Number.NaN, below + (position - Math.floor(position)) * (above - below), { abs: 1e-6 });
      });
    }));
  });

  it('of equal values are that value', () => {
    expect(quantilesInPlace(new Float64Array(100).fill(4), [0.05, 0.5, 0.95])).toEqual([4, 4, 4]);
  });
});
