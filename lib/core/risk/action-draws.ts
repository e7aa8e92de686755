import type { PathChange } from './candidates';
import type { DrawPlan } from './draw-plan';
import { classAt, type DrawObserver, failureInPlace } from './draws';
import type { RiskSetup } from './risk-setup';

/** The paired difference of one candidate over the draws, harm points per season. */
export interface PairedDifferences { readonly observe: DrawObserver; readonly differences: readonly Float64Array[] }

/**
 * Watches the draws and, on each, works out what every candidate would have taken away in that very draw
 * (amendment A53): same chance in everything, only the state changed.
 * @param changes path changes of each candidate
 * @param limit draws to use; later ones are passed over
 */
export function pairedDifferences(setup: RiskSetup, plan: DrawPlan, changes: readonly (readonly PathChange[])[], limit: number): PairedDifferences {
  const differences = changes.map(() => new Float64Array(limit));
  const thresholds = thresholdsByKey(setup, changes);
  const keys = [...thresholds.keys()];
  const lists = changes.map((list) => list.map((change) => ({ ...change, before: keys.indexOf(change.severityBefore.key), after: keys.indexOf(change.severityAfter.key), sameSeverity: change.severityBefore.key === change.severityAfter.key })));
  const bounds = [...thresholds.values()];
  const weights = new Float64Array(bounds.length);
  const observe: DrawObserver = (state, draw) => {
    if (draw >= limit) return;
    for (let index = 0; index < bounds.length; index += 1) weights[index] = plan.weights[classAt(bounds[index] as Float64Array, state.normal[0] as number)] as number;
    for (let candidate = 0; candidate < lists.length; candidate += 1) {
      let difference = 0;
      for (const change of lists[candidate] as (typeof lists)[number]) {
        let ratio = 1;
        if (change.joins !== null) ratio = 1 - change.joins.reach * (1 - failureInPlace(plan, state, change.joins.control));
        if (change.leaves !== null) ratio /= 1 - change.leaves.reach * (1 - (state.failure[change.leaves.control] as number));
        if (!change.sameSeverity) ratio *= (weights[change.after] as number) / (weights[change.before] as number);
        difference += (state.branchHarm[change.path] as number) * (1 - ratio);
      }
      (differences[candidate] as Float64Array)[draw] = difference;
    }
  };
  return { observe, differences };
}

/** Thresholds of every severity that some change leaves or reaches, each once. */
function thresholdsByKey(setup: RiskSetup, changes: readonly (readonly PathChange[])[]): ReadonlyMap<string, Float64Array> {
  const severities = changes.flatMap((list) => list.flatMap((change) => [change.severityBefore, change.severityAfter]));
  return new Map(severities.map((severity) => [severity.key, Float64Array.from(setup.severities.of(severity).thresholds)]));
}
