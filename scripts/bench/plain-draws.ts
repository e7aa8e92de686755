import type { Venue } from '@/lib/core/answers/venue';
import { stateOf } from '@/lib/core/answers/venue';
import { evaluateClosed } from '@/lib/core/risk/closed-form';
import { countedScenarios } from '@/lib/core/risk/counted-uses';
import { failuresOf, type RiskSetup } from '@/lib/core/risk/risk-setup';
import { gammaVariate } from '@/lib/core/sampling/gamma-variate';
import { normalVariate } from '@/lib/core/sampling/normal-variate';
import { RandomStream } from '@/lib/core/sampling/random-stream';
import { logSpread } from '@/lib/core/statistics/clipped-lognormal';

/**
 * The same model drawn plainly: every draw fills in failures, rates, shares and burn strength, and the
 * closed form is evaluated on them. Slow and easy to read; the fast sampler is held against it.
 * @returns total harm of each draw
 */
export function plainDraws(setup: RiskSetup, venue: Venue, count: number, seed: number): Float64Array {
  const stream = RandomStream.of(seed, 9);
  const counted = countedScenarios(setup.compiled, failuresOf(setup.compiled, venue));
  const { controls, slotOf, slots, scenarios } = setup.compiled;
  return Float64Array.from({ length: count }, () => {
    const burnStrength = normalVariate(stream);
    const z = Array.from({ length: slots }, () => normalVariate(stream));
    const failure = Float64Array.from(controls, (control, index) => {
      const inPlace = Math.min(1, control.pfd * Math.exp(logSpread(control.errorFactor) * (z[slotOf[index] ?? 0] ?? 0)));
      const power = stream.nextOpen();
      switch (stateOf(venue, control.id)) {
        case 'in place': return inPlace;
        case 'partly': return Math.sqrt(inPlace);
        case 'not sure': return inPlace ** power;
        default: return 1;
      }
    });
    const rates = setup.rates.map((rate) => gammaVariate(stream, rate.shape) / rate.rate);
    const conditionals = scenarios.map(({ branches }) => branches.map(({ branch: { conditional } }) =>
      Math.min(1, conditional.p * Math.exp(logSpread(conditional.errorFactor) * normalVariate(stream)))));
    return evaluateClosed(setup, venue, { failure, counted, rates, conditionals, weight: (severity) => setup.severities.weightAt(severity, burnStrength) }).totalHarm;
  });
}
