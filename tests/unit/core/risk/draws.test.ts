import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { inPlace } from '@/lib/core/risk/candidates';
import { drawPlan } from '@/lib/core/risk/draw-plan';
import { runDraws } from '@/lib/core/risk/draws';
import { score } from '@/lib/core/score';
import { quantilesInPlace } from '@/lib/core/sampling/quantiles';
import { plainDraws } from '@/scripts/bench/plain-draws';
import { expectWithin } from '../../../support/expect-within';
import { ready } from '../../../support/evaluate';
import { REFERENCE_VENUES, referenceDocument } from '../../../support/reference-venues';

const mean = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0) / values.length;
function standardError(values: Float64Array): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1) / values.length);
}

describe('draws', () => {
  it.each(REFERENCE_VENUES)('have the means of the closed form, in %s', (venue) => {
    const { setup, today } = ready(referenceDocument(venue));
    const draws = runDraws(drawPlan(setup, setup.venue), 60_000, 11);
    today.risks.forEach((risk, index) => {
      const frequency = draws.frequency[index] ?? new Float64Array(1);
      const harm = draws.harm[index] ?? new Float64Array(1);
      expect(Math.abs(mean(frequency) - risk.topFrequency)).toBeLessThanOrEqual(4.5 * standardError(frequency));
      // the closed weight is a mean over 200 slices, so a step of the class may lie within a slice
      expect(Math.abs(mean(harm) - risk.harm)).toBeLessThanOrEqual(4.5 * standardError(harm) + 0.01 * risk.harm);
    });
  });

  it('have the distribution of a plain sampler of the same model', () => {
    const { setup } = ready(referenceDocument('everything'));
    const fast = runDraws(drawPlan(setup, setup.venue), 6000, 3).total.sort();
    const plain = plainDraws(setup, setup.venue, 6000, 3).sort();
    // Kolmogorov and Smirnov, two samples: 1.95 · √(2/n) is passed by chance once in a thousand
    let gap = 0;
    let at = 0;
    fast.forEach((value, index) => {
      while (at < plain.length && (plain[at] ?? 0) <= value) at += 1;
      gap = Math.max(gap, Math.abs((index + 1) / fast.length - at / plain.length));
    });
    expect(gap).toBeLessThan(1.95 * Math.sqrt(2 / 6000));
  }, 60_000);

  it('see the same chance in everything that was not changed', () => {
    const document = referenceDocument('ordinary-classroom');
    const one = ready(document);
    const other = ready({ ...document, states: { 'outdoor-spot': 'in place' } });
    const before = runDraws(drawPlan(one.setup, one.venue), 500, 5);
    const after = runDraws(drawPlan(other.setup, other.venue), 500, 5);
    const untouched = edition1.scenarios.findIndex((scenario) => scenario.id === 'rotor-strike');
    expect(after.harm[untouched]).toEqual(before.harm[untouched]);
  });

  it('differ with the seed', () => {
    const { setup } = ready(referenceDocument('good-hall'));
    const plan = drawPlan(setup, setup.venue);
    expect(runDraws(plan, 50, 1).total).not.toEqual(runDraws(plan, 50, 2).total);
  });
});

describe('paired differences of actions', () => {
  it('have the mean that the closed form gives', () => {
    const document = referenceDocument('everything');
    const result = score(edition1, document, { seed: 9, draws: 4000, inputHash: 'x' });
    const { setup, venue, today } = ready(document);
    const before = runDraws(drawPlan(setup, venue), 4000, 9).total;
    for (const action of result.actions.filter((one) => one.harmReduction > 0.01 * today.totalHarm)) {
      const after = runDraws(drawPlan(setup, inPlace(venue, [action.control])), 4000, 9).total;
      const differences = before.map((total, draw) => total - (after[draw] ?? 0));
      expectWithin(mean(differences), action.harmReduction, { abs: 5 * standardError(differences) });
      // intervals rest on the first thousand draws
      const [p05 = Number.NaN, p95 = Number.NaN] = quantilesInPlace(differences.slice(0, 1000), [0.05, 0.95]);
      expectWithin(action.interval.p05, p05, { abs: 1e-9 * today.totalHarm });
      expectWithin(action.interval.p95, p95, { abs: 1e-9 * today.totalHarm });
    }
  }, 120_000);
});
