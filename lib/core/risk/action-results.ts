import { at } from '@/lib/core/at';
import type { ActionResult } from '@/lib/core/result';
import { quantilesInPlace } from '@/lib/core/sampling/quantiles';
import { type Candidate, candidatesOf, inPlace, pathChanges } from './candidates';
import { evaluateClosed } from './closed-form';
import { pairedDifferences } from './action-draws';
import { type DrawPlan, drawPlan } from './draw-plan';
import { type DrawObserver, runDraws } from './draws';
import { changesExposure } from './path-weights';
import type { RiskSetup } from './risk-setup';
import { stopsOf } from './stops';

/** Draws that the intervals of actions rest on: a 5th and a 95th percentile need no more, and there are some fifty actions. */
const PAIRED_DRAWS = 1000;

/** Single-control actions: first watch the draws, then ask for the results. */
export interface ActionStudy { readonly observe: DrawObserver; readonly results: () => readonly ActionResult[] }

/**
 * For every candidate the fall of total mean harm if it alone were in place, with the interval of the
 * paired difference over the same draws, and the stop conditions that would fall with it. Where an action
 * moves no input although it would in the room, its gain is a lower bound (amendment A49).
 * @param seed the seed the draws are made with
 */
export function actionStudy(setup: RiskSetup, plan: DrawPlan, { draws, seed }: { readonly draws: number; readonly seed: number }): ActionStudy {
  const candidates = candidatesOf(setup.venue);
  const used = Math.min(draws, PAIRED_DRAWS);
  const paired = pairedDifferences(setup, plan, candidates.map((candidate) => ({ candidate, changes: pathChanges(setup, candidate) })), used);
  const differencesOf = (candidate: Candidate, index: number): Float64Array =>
    (changesExposure(setup, candidate) ? wholeDifferences(setup, plan, candidate, used, seed) : at(paired.differences, index));
  const results = (): readonly ActionResult[] => {
    const today = evaluateClosed(setup, setup.venue).totalHarm;
    const stops = stopsOf(setup.venue, setup.physics).map((stop) => stop.id);
    return candidates
      .map((candidate, index) => actionResult(setup, candidate, today, stops, differencesOf(candidate, index)))
      .sort((one, other) => other.harmReduction - one.harmReduction || (one.control < other.control ? -1 : 1));
  };
  return { observe: paired.observe, results };
}

/** The draws made twice with the same chance: an exposure that is zero today cannot be scaled up from one run. */
function wholeDifferences(setup: RiskSetup, plan: DrawPlan, candidate: Candidate, draws: number, seed: number): Float64Array {
  const before = runDraws(plan, draws, seed).total;
  const after = runDraws(drawPlan(setup, inPlace(setup.venue, [candidate.control])), draws, seed).total;
  return before.map((harm, draw) => harm - at(after, draw));
}

function actionResult(setup: RiskSetup, candidate: Candidate, today: number, stops: readonly string[], differences: Float64Array): ActionResult {
  const control = at(setup.compiled.controls, candidate.index);
  const after = inPlace(setup.venue, [candidate.control]);
  const harmReduction = today - evaluateClosed(setup, after).totalHarm;
  const still = new Set(stops.length === 0 ? [] : stopsOf(after, setup.physics).map((stop) => stop.id));
  const [p05 = 0, p95 = 0] = quantilesInPlace(differences, [0.05, 0.95]);
  return {
    control: control.id,
    title: control.title,
    goodLooksLike: control.goodLooksLike,
    state: candidate.state,
    harmReduction,
    share: today > 0 ? harmReduction / today : 0,
    interval: { p05, p95 },
    effort: candidate.effort,
    hours: control.effort.hours,
    moneyBand: control.effort.moneyBand,
    clearsStops: stops.filter((stop) => !still.has(stop)),
  };
}
