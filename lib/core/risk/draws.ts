import { gammaVariate } from '@/lib/core/sampling/gamma-variate';
import { RandomStream } from '@/lib/core/sampling/random-stream';
import { normalQuantile } from '@/lib/core/statistics/normal';
import { type DrawPlan, FAILS, IN_PLACE, PARTLY, type UseList } from './draw-plan';

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
  readonly slotZ: Float64Array;
  readonly power: Float64Array;
  /** X of every control */
  readonly failure: Float64Array;
  /** class 1 to 5 of every severity case */
  readonly severity: Uint8Array;
  /** harm of every branch, all scenarios in order */
  readonly branchHarm: Float64Array;
  burnStrength: number;
}
export type DrawObserver = (state: DrawState, draw: number) => void;

export function newDrawState(plan: DrawPlan): DrawState {
  return {
    slotZ: new Float64Array(plan.slots),
    power: new Float64Array(plan.mode.length).fill(1),
    failure: new Float64Array(plan.mode.length).fill(1),
    severity: new Uint8Array(plan.cases.length),
    branchHarm: new Float64Array(plan.scenarios.reduce((sum, scenario) => sum + scenario.branches.length, 0)),
    burnStrength: 0,
  };
}

/**
 * Seeded Monte Carlo over rates, failures on demand, conditional shares and burn strength (amendments A13,
 * A14). Normals, powers and gammas come from three streams, and as many are taken whatever the states
 * are, so that two venues that differ in one control see the same chance in everything else.
 * @param count draws, 1 or more
 * @param seed whole number, 0 to 4,294,967,295
 */
export function runDraws(plan: DrawPlan, count: number, seed: number, observe?: DrawObserver): Draws {
  const streams = { normal: new RandomStream(seed, 0), power: new RandomStream(seed, 1), gamma: new RandomStream(seed, 2) };
  const draws: Draws = {
    count,
    frequency: plan.scenarios.map(() => new Float64Array(count)),
    harm: plan.scenarios.map(() => new Float64Array(count)),
    total: new Float64Array(count),
    gradeCounts: new Uint32Array(plan.scenarios.length * 4),
    firstCounts: new Uint32Array(plan.scenarios.length),
  };
  const state = newDrawState(plan);
  for (let draw = 0; draw < count; draw += 1) {
    drawControls(plan, state, streams.normal, streams.power);
    drawScenarios(plan, state, streams.normal, streams.gamma, draws, draw);
    observe?.(state, draw);
  }
  return draws;
}

function drawControls(plan: DrawPlan, state: DrawState, normal: RandomStream, power: RandomStream): void {
  const { slotZ, failure } = state;
  state.burnStrength = normalQuantile(normal.nextOpen());
  for (let one = 0; one < plan.cases.length; one += 1) state.severity[one] = classAt(plan.cases[one] as Float64Array, state.burnStrength);
  for (let slot = 0; slot < slotZ.length; slot += 1) slotZ[slot] = normalQuantile(normal.nextOpen());
  if (plan.anyUnsure) for (let control = 0; control < state.power.length; control += 1) state.power[control] = power.nextOpen();
  for (let control = 0; control < failure.length; control += 1) {
    const mode = plan.mode[control] as number;
    if (mode === FAILS) continue;
    const log = inPlaceLog(plan, slotZ, control);
    if (log >= 0) failure[control] = 1;
    else if (mode === IN_PLACE) failure[control] = Math.exp(log);
    else failure[control] = Math.exp(log * (mode === PARTLY ? 0.5 : (state.power[control] as number)));
  }
}

/** ln X of a control in place before the cap at 1. */
export function inPlaceLog(plan: DrawPlan, slotZ: Float64Array, control: number): number {
  return (plan.logPfd[control] as number) + (plan.sigma[control] as number) * (slotZ[plan.slotOf[control] as number] as number);
}

export function classAt(thresholds: Float64Array, z: number): number {
  let severity = 1;
  for (let step = 0; step < 4; step += 1) if (z >= (thresholds[step] as number)) severity = step + 2;
  return severity;
}

function product(uses: UseList, failure: Float64Array): number {
  let value = 1;
  const { control, reach } = uses;
  for (let index = 0; index < control.length; index += 1) {
    value *= 1 - (reach[index] as number) * (1 - (failure[control[index] as number] as number));
  }
  return value;
}

function drawScenarios(plan: DrawPlan, state: DrawState, normal: RandomStream, gamma: RandomStream, draws: Draws, draw: number): void {
  const { levelBounds, gradeAt, weights } = plan;
  let at = 0;
  let total = 0;
  let first = 0;
  let most = -1;
  for (let index = 0; index < plan.scenarios.length; index += 1) {
    const scenario = plan.scenarios[index] as DrawPlan['scenarios'][number];
    const rate = gammaVariate(gamma, scenario.shape) * scenario.scale;
    const top = product(scenario.top, state.failure);
    let harm = 0;
    let worst = 0;
    for (let branchIndex = 0; branchIndex < scenario.branches.length; branchIndex += 1) {
      const branch = scenario.branches[branchIndex] as DrawPlan['scenarios'][number]['branches'][number];
      const logShare = branch.logP + branch.sigma * normalQuantile(normal.nextOpen());
      const share = logShare >= 0 ? 1 : Math.exp(logShare);
      const frequency = rate * (branch.onTop ? top : 1) * product(branch.uses, state.failure) * share;
      const severity = state.severity[branch.severity] as number;
      let level = 0;
      while (level < levelBounds.length && frequency >= (levelBounds[level] as number)) level += 1;
      const grade = gradeAt[level * 6 + severity] as number;
      if (grade > worst) worst = grade;
      const branchHarm = frequency * (weights[severity] as number);
      state.branchHarm[at] = branchHarm;
      at += 1;
      harm += branchHarm;
    }
    (draws.frequency[index] as Float64Array)[draw] = rate * top;
    (draws.harm[index] as Float64Array)[draw] = harm;
    draws.gradeCounts[index * 4 + worst] = (draws.gradeCounts[index * 4 + worst] as number) + 1;
    total += harm;
    if (harm > most) { most = harm; first = index; }
  }
  draws.total[draw] = total;
  draws.firstCounts[first] = (draws.firstCounts[first] as number) + 1;
}
