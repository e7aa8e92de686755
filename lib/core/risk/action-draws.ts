import type { Candidate, PathChange } from './candidates';
import type { DrawPlan } from './draw-plan';
import { classAt, type DrawObserver, type DrawState, failureInPlace } from './draws';
import type { RiskSetup } from './risk-setup';

/** A candidate and the paths it changes. */
export interface CandidateChanges { readonly candidate: Candidate; readonly changes: readonly PathChange[] }

/** The paired difference of each candidate over the draws, harm points per season. */
export interface PairedDifferences { readonly observe: DrawObserver; readonly differences: readonly Float64Array[] }

/**
 * Watches the draws and, on each, works out what every candidate would have taken away in that very draw
 * (amendment A53): same chance in everything, only the state changed.
 * @param limit draws to use; later ones are passed over
 */
export function pairedDifferences(setup: RiskSetup, plan: DrawPlan, studied: readonly CandidateChanges[], limit: number): PairedDifferences {
  const differences = studied.map(() => new Float64Array(limit));
  const rows = flatRows(setup, studied);
  const observe: DrawObserver = (state, draw) => {
    if (draw >= limit) return;
    weighSeverities(plan, rows, state);
    for (let candidate = 0; candidate < differences.length; candidate += 1) {
      (differences[candidate] as Float64Array)[draw] = differenceOf(plan, rows, state, candidate);
    }
  };
  return { observe, differences };
}

/** All changes in one row; those of candidate i lie from from[i] to from[i + 1]. */
interface FlatRows {
  readonly from: Int32Array;
  readonly control: Int32Array;
  readonly path: Int32Array;
  /** reach with which the candidate joins the path, 0 when only the severity changes */
  readonly joinReach: Float64Array;
  /** use that leaves the path, −1 when none does */
  readonly leaveControl: Int32Array;
  readonly leaveReach: Float64Array;
  /** severity before and after, −1 when it stays */
  readonly before: Int32Array;
  readonly after: Int32Array;
  readonly thresholds: readonly Float64Array[];
  readonly weights: Float64Array;
}

function flatRows(setup: RiskSetup, studied: readonly CandidateChanges[]): FlatRows {
  const all = studied.flatMap((one) => one.changes);
  const moved = all.filter((change) => change.severityBefore.key !== change.severityAfter.key);
  const severities = new Map(moved.flatMap((change) => [change.severityBefore, change.severityAfter]).map((severity) => [severity.key, severity]));
  const keys = [...severities.keys()];
  const stays = (change: PathChange): boolean => change.severityBefore.key === change.severityAfter.key;
  let from = 0;
  return {
    from: Int32Array.from([0, ...studied.map((one) => (from += one.changes.length))]),
    control: Int32Array.from(studied, (one) => one.candidate.index),
    path: Int32Array.from(all, (change) => change.path),
    joinReach: Float64Array.from(all, (change) => change.joins?.reach ?? 0),
    leaveControl: Int32Array.from(all, (change) => change.leaves?.control ?? -1),
    leaveReach: Float64Array.from(all, (change) => change.leaves?.reach ?? 0),
    before: Int32Array.from(all, (change) => (stays(change) ? -1 : keys.indexOf(change.severityBefore.key))),
    after: Int32Array.from(all, (change) => (stays(change) ? -1 : keys.indexOf(change.severityAfter.key))),
    thresholds: [...severities.values()].map((severity) => setup.severities.thresholdsOf(severity)),
    weights: new Float64Array(keys.length),
  };
}

function weighSeverities(plan: DrawPlan, rows: FlatRows, state: DrawState): void {
  const burnStrength = state.normal[0] as number;
  for (let index = 0; index < rows.weights.length; index += 1) rows.weights[index] = plan.weights[classAt(rows.thresholds[index] as Float64Array, burnStrength)] as number;
}

function differenceOf(plan: DrawPlan, rows: FlatRows, state: DrawState, candidate: number): number {
  const { path, joinReach, leaveControl, leaveReach, before, after, weights } = rows;
  const works = 1 - failureInPlace(plan, state, rows.control[candidate] as number);
  let difference = 0;
  for (let row = rows.from[candidate] as number, to = rows.from[candidate + 1] as number; row < to; row += 1) {
    let ratio = 1 - (joinReach[row] as number) * works;
    const leaves = leaveControl[row] as number;
    if (leaves >= 0) ratio /= 1 - (leaveReach[row] as number) * (1 - (state.failure[leaves] as number));
    const now = before[row] as number;
    if (now >= 0) ratio *= (weights[after[row] as number] as number) / (weights[now] as number);
    difference += (state.branchHarm[path[row] as number] as number) * (1 - ratio);
  }
  return difference;
}
