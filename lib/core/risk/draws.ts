import { gammaVariate } from '@/lib/core/sampling/gamma-variate';
import { normalVariate } from '@/lib/core/sampling/normal-variate';
import { RandomStream } from '@/lib/core/sampling/random-stream';
import { type DrawPlan, FAILS, IN_PLACE, PARTLY } from './draw-plan';

/** What the draws of one venue gave; every array is by scenario, then by draw. */
export interface Draws {
  readonly count: number;
  readonly frequency: readonly Float64Array[];
  readonly harm: readonly Float64Array[];
  readonly total: Float64Array;
  /** draws in which the worst branch had grade 0 to 3, at scenario·4 + grade */
  readonly gradeCounts: Uint32Array;
  /** draws in which each scenario had the most harm */
  readonly firstCounts: Uint32Array;
}

/** One draw while it is being made; kept whole so that actions can be compared on the very same draw. */
export interface DrawState {
  /** burn strength first, then one standard normal for each slot, then one for each branch */
  readonly normal: Float64Array;
  readonly power: Float64Array;
  /** initiating events per season of each scenario */
  readonly rate: Float64Array;
  /** X of every control */
  readonly failure: Float64Array;
  /** class 1 to 5 of every severity case */
  readonly severity: Uint8Array;
  /** harm of every branch, all scenarios in order */
  readonly branchHarm: Float64Array;
}
export type DrawObserver = (state: DrawState, draw: number) => void;

interface Streams { readonly normal: RandomStream; readonly power: RandomStream; readonly gamma: RandomStream }

/**
 * Seeded Monte Carlo over rates, failures on demand, conditional shares and burn strength (amendments A13,
 * A14). Normals, powers and gammas come from three streams, and as many are taken whatever the states
 * are, so that two venues that differ in one control see the same chance in everything else.
 * @param count draws, 1 or more
 * @param seed whole number, 0 to 4,294,967,295
 */
export function runDraws(plan: DrawPlan, count: number, seed: number, observe?: DrawObserver): Draws {
  const streams: Streams = { normal: RandomStream.of(seed, 0), power: RandomStream.of(seed, 1), gamma: RandomStream.of(seed, 2) };
  const scenarios = plan.shape.length;
  const draws: Draws = {
    count,
    frequency: Array.from({ length: scenarios }, () => new Float64Array(count)),
    harm: Array.from({ length: scenarios }, () => new Float64Array(count)),
    total: new Float64Array(count),
    gradeCounts: new Uint32Array(scenarios * 4),
    firstCounts: new Uint32Array(scenarios),
  };
  const state = newState(plan);
  for (let draw = 0; draw < count; draw += 1) {
    drawChance(plan, state, streams);
    drawControls(plan, state);
    drawScenarios(plan, state, draws, draw);
    observe?.(state, draw);
  }
  return draws;
}

function newState(plan: DrawPlan): DrawState {
  return {
    normal: new Float64Array(1 + plan.slots + plan.onTop.length),
    power: new Float64Array(plan.mode.length).fill(1),
    rate: new Float64Array(plan.shape.length),
    failure: new Float64Array(plan.mode.length).fill(1),
    severity: new Uint8Array(plan.cases.length),
    branchHarm: new Float64Array(plan.onTop.length),
  };
}

function drawChance(plan: DrawPlan, state: DrawState, streams: Streams): void {
  const { normal, power, rate } = state;
  for (let index = 0; index < normal.length; index += 1) normal[index] = normalVariate(streams.normal);
  if (plan.anyUnsure) for (let control = 0; control < power.length; control += 1) power[control] = streams.power.nextOpen();
  for (let index = 0; index < rate.length; index += 1) rate[index] = gammaVariate(streams.gamma, plan.shape[index] as number) * (plan.scale[index] as number);
}

function drawControls(plan: DrawPlan, state: DrawState): void {
  const { failure, normal, power, severity } = state;
  const { mode, logPfd, sigma, slotOf } = plan;
  for (let one = 0; one < severity.length; one += 1) severity[one] = classAt(plan.cases[one] as Float64Array, normal[0] as number);
  for (let control = 0; control < failure.length; control += 1) {
    const how = mode[control] as number;
    if (how === FAILS) continue;
    const log = (logPfd[control] as number) + (sigma[control] as number) * (normal[1 + (slotOf[control] as number)] as number);
    if (log >= 0) failure[control] = 1;
    else failure[control] = Math.exp(how === IN_PLACE ? log : log * (how === PARTLY ? 0.5 : (power[control] as number)));
  }
}

/** X of a control if it were in place, in this very draw. */
export function failureInPlace(plan: DrawPlan, state: DrawState, control: number): number {
  const log = (plan.logPfd[control] as number) + (plan.sigma[control] as number) * (state.normal[1 + (plan.slotOf[control] as number)] as number);
  return log >= 0 ? 1 : Math.exp(log);
}

/** Class 1 to 5 at a burn strength. */
export function classAt(thresholds: Float64Array, z: number): number {
  let severity = 1;
  for (let step = 0; step < 4; step += 1) if (z >= (thresholds[step] as number)) severity = step + 2;
  return severity;
}

function drawScenarios(plan: DrawPlan, state: DrawState, draws: Draws, draw: number): void {
  const { branchFrom, pathFrom, pathTo, topFrom, onTop, useControl, useReach, logShare, shareSigma, levelBounds, gradeAt, weights } = plan;
  const { failure, normal, rate, severity, branchHarm } = state;
  const shareNormals = 1 + plan.slots;
  let total = 0;
  let first = 0;
  let most = -1;
  for (let index = 0; index < rate.length; index += 1) {
    const firstBranch = branchFrom[index] as number;
    const lastBranch = branchFrom[index + 1] as number;
    let top = rate[index] as number;
    for (let use = topFrom[index] as number, to = pathFrom[firstBranch] as number; use < to; use += 1) top *= 1 - (useReach[use] as number) * (1 - (failure[useControl[use] as number] as number));
    let harm = 0;
    let worst = 0;
    for (let branch = firstBranch; branch < lastBranch; branch += 1) {
      let frequency = onTop[branch] === 1 ? top : (rate[index] as number);
      for (let use = pathFrom[branch] as number, to = pathTo[branch] as number; use < to; use += 1) frequency *= 1 - (useReach[use] as number) * (1 - (failure[useControl[use] as number] as number));
      const share = (logShare[branch] as number) + (shareSigma[branch] as number) * (normal[shareNormals + branch] as number);
      if (share < 0) frequency *= Math.exp(share);
      const bad = severity[plan.severity[branch] as number] as number;
      let level = 0;
      while (level < levelBounds.length && frequency >= (levelBounds[level] as number)) level += 1;
      const grade = gradeAt[level * 6 + bad] as number;
      if (grade > worst) worst = grade;
      const harmHere = frequency * (weights[bad] as number);
      branchHarm[branch] = harmHere;
      harm += harmHere;
    }
    (draws.frequency[index] as Float64Array)[draw] = top;
    (draws.harm[index] as Float64Array)[draw] = harm;
    draws.gradeCounts[index * 4 + worst] = (draws.gradeCounts[index * 4 + worst] as number) + 1;
    total += harm;
    if (harm > most) { most = harm; first = index; }
  }
  draws.total[draw] = total;
  draws.firstCounts[first] = (draws.firstCounts[first] as number) + 1;
}
