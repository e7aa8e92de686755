import gammaQuantile from '@stdlib/stats-base-dists-gamma-quantile';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { Scenario } from '@/lib/content/model';
import { rateWithRecord, rememberedShapes } from '@/lib/core/risk/rate';
import { expectWithin } from '../../../support/expect-within';
import { scoreReference } from '../../../support/reference-venues';

const scenario = (id: string): Scenario => {
  const found = edition1.scenarios.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no scenario ${id}`);
  return found;
};

describe('a rate', () => {
  it('starts as a gamma with the mean and the P95/P50 of the content', () => {
    const rate = rateWithRecord(scenario('charge-runaway'), undefined, 1, rememberedShapes());
    expectWithin(rate.shape / rate.rate, 1e-4, { rel: 1e-12 });
    // shape of an error factor of 10: amendment A8 gives 0.439524
    expectWithin(rate.shape, 0.439524, { abs: 5e-7 });
    expectWithin(gammaQuantile(0.95, rate.shape, rate.rate) / gammaQuantile(0.5, rate.shape, rate.rate), 10, { rel: 1e-6 });
  });

  it('learns as gamma and Poisson do', () => {
    // gamma–Poisson conjugacy, NUREG/CR-6823 chapter 6 (formula from memory): a + n, b + E. REFERENCES E.2
    // gives for the prior Γ(2, 10) and 3 events in 20 the mean 0.166667 and 0.065672 to 0.305117 (computed)
    const prior: Scenario = { ...scenario('charge-runaway'), rate: { ...scenario('charge-runaway').rate, mean: 0.2 } };
    const learned = rateWithRecord(prior, { events: 3, exposure: 20, preventiveProduct: 1 }, 1, () => 2);
    expect(learned.shape).toBe(5);
    expectWithin(learned.rate, 30, { rel: 1e-12 });
    expectWithin(learned.learning?.posterior.mean ?? Number.NaN, 0.166667, { abs: 5e-7 });
    expectWithin(learned.learning?.posterior.p05 ?? Number.NaN, 0.065672, { abs: 5e-7 });
    expectWithin(learned.learning?.posterior.p95 ?? Number.NaN, 0.305117, { abs: 5e-7 });
  });

  it('counts a record made behind good controls for less', () => {
    const shapes = rememberedShapes();
    const bare = rateWithRecord(scenario('charge-runaway'), { events: 0, exposure: 5000, preventiveProduct: 1 }, 1, shapes);
    const behind = rateWithRecord(scenario('charge-runaway'), { events: 0, exposure: 5000, preventiveProduct: 0.2 }, 1, shapes);
    expect(bare.shape / bare.rate).toBeLessThan(behind.shape / behind.rate);
    expect(behind.shape / behind.rate).toBeLessThan(1e-4);
  });

  it('is lowered by quiet seasons and raised by events, in the score too', () => {
    const of = (events: number) => scoreReference('ordinary-classroom', 200, { record: { 'charge-runaway': { events, exposure: 5000 } } }).risks.find((risk) => risk.id === 'charge-runaway');
    const plain = scoreReference('ordinary-classroom', 200).risks.find((risk) => risk.id === 'charge-runaway');
    expect(of(0)?.topFrequencyMean).toBeLessThan(plain?.topFrequencyMean ?? 0);
    expect(of(4)?.topFrequencyMean).toBeGreaterThan(plain?.topFrequencyMean ?? Number.POSITIVE_INFINITY);
    expect(of(0)?.learning?.record.assumedToday).toBe(true);
    expect(plain?.learning).toBeNull();
  });
});
