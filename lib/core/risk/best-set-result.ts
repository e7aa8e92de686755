import { at } from '@/lib/core/at';
import type { BestSet } from '@/lib/core/result';
import { quantilesInPlace } from '@/lib/core/sampling/quantiles';
import { bestSet } from './best-set';
import { inPlace } from './candidates';
import { drawPlan } from './draw-plan';
import { runDraws } from './draws';
import type { RiskSetup } from './risk-setup';

/**
 * The best set for a budget, with the range of the share of harm it takes away: the same draws again with
 * the set in place, compared draw by draw.
 * @param totals total harm of today's draws, in the order drawn
 * @param seed the seed those draws were made with
 */
export function bestSetResult(setup: RiskSetup, budget: number, totals: Float64Array, seed: number): BestSet {
  const chosen = bestSet(setup, budget);
  const harmReduction = chosen.harmBefore - chosen.harmAfter;
  const cutInterval = chosen.controls.length === 0 ? { p05: 0, p95: 0 } : cutRange(setup, chosen.controls, totals, seed);
  return {
    budget,
    controls: chosen.controls,
    effort: chosen.effort,
    harmBefore: chosen.harmBefore,
    harmAfter: chosen.harmAfter,
    harmReduction,
    cut: chosen.harmBefore > 0 ? harmReduction / chosen.harmBefore : 0,
    cutInterval,
    complete: chosen.complete,
  };
}

function cutRange(setup: RiskSetup, controls: readonly string[], totals: Float64Array, seed: number) {
  const after = runDraws(drawPlan(setup, inPlace(setup.venue, controls)), totals.length, seed).total;
  const cuts = Float64Array.from(totals, (before, draw) => (before > 0 ? 1 - at(after, draw) / before : 0));
  const [p05 = 0, p95 = 0] = quantilesInPlace(cuts, [0.05, 0.95]);
  return { p05, p95 };
}
