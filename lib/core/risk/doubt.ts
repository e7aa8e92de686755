import { at } from '@/lib/core/at';
import type { DoubtResult } from '@/lib/core/result';
import { stateOf, withStates } from '@/lib/core/answers/venue';
import { Z95 } from '@/lib/core/statistics/clipped-lognormal';
import { gammaQuantile } from '@/lib/core/statistics/gamma';
import { type ClosedEvaluation, evaluateClosed, type Variation } from './closed-form';
import type { CompiledScenario } from './compiled-content';
import { countedScenarios, type CountedScenario } from './counted-uses';
import { meanOf } from './rate';
import { exposuresOf, failuresOf, type RiskSetup } from './risk-setup';

/** How far a reach is moved either way: it has no published base at all. */
const REACH_STEP = 0.2;

/**
 * What most widens the total: mean harm with one thing at its low and at its high end, all else as today.
 * Answers nobody is sure of are moved between in place and absent; figures of ours between P5 and P95;
 * reaches by 0.2 either way. Bars without width are left out.
 * @returns widest first, ties by id
 */
export function doubts(setup: RiskSetup): readonly DoubtResult[] {
  const study = { setup, exposures: exposuresOf(setup.compiled, setup.venue), counted: countedScenarios(setup.compiled, failuresOf(setup.compiled, setup.venue)) };
  return sortedByWidth([...unsureAnswers(setup), ...controlFigures(study), ...reaches(study), ...rates(study), ...conditionals(study), burnStrength(study)]);
}

/** The venue, and which uses count today: figures move, the choice within a group does not. */
interface Study { readonly setup: RiskSetup; readonly exposures: readonly number[]; readonly counted: readonly CountedScenario[] }

/** Widest first; no width, no bar. */
export function sortedByWidth(bars: readonly DoubtResult[]): readonly DoubtResult[] {
  const width = (bar: DoubtResult): number => Math.abs(bar.harmHigh - bar.harmLow);
  return bars.filter((bar) => width(bar) > 0).sort((one, other) => width(other) - width(one) || (one.id < other.id ? -1 : 1));
}

function bar({ setup, counted }: Study, base: Omit<DoubtResult, 'harmLow' | 'harmHigh'>, low: Variation, high: Variation): DoubtResult {
  return { ...base, ...ends(evaluateClosed(setup, setup.venue, { counted, ...low }), evaluateClosed(setup, setup.venue, { counted, ...high })) };
}

function ends(one: ClosedEvaluation, other: ClosedEvaluation): Pick<DoubtResult, 'harmLow' | 'harmHigh'> {
  return { harmLow: Math.min(one.totalHarm, other.totalHarm), harmHigh: Math.max(one.totalHarm, other.totalHarm) };
}

function unsureAnswers(setup: RiskSetup): readonly DoubtResult[] {
  const { venue } = setup;
  return venue.content.controls.filter((control) => stateOf(venue, control.id) === 'not sure').map((control) => {
    const good = evaluateClosed(setup, withStates(venue, new Map([[control.id, 'in place']])));
    const bad = evaluateClosed(setup, withStates(venue, new Map([[control.id, 'absent']])));
    return { kind: 'answer', id: control.id, title: control.title, between: 'in place, or absent', canBeChecked: true, ...ends(good, bad) };
  });
}

/** A control that is in place or partly so, at the P5 and the P95 of its failure on demand. */
function controlFigures(study: Study): readonly DoubtResult[] {
  const { venue, compiled } = study.setup;
  const today = failuresOf(compiled, venue);
  return compiled.controls.flatMap((control, index) => {
    const state = stateOf(venue, control.id);
    if (state !== 'in place' && state !== 'partly') return [];
    const power = state === 'partly' ? 0.5 : 1;
    const moved = (factor: number): Variation => ({ failure: today.map((value, position) => (position === index ? Math.min(1, control.pfd * factor) ** power : value)) });
    return [bar(study, { kind: 'control', id: control.id, title: control.title, between: 'works better or worse than we judge', canBeChecked: false }, moved(1 / control.errorFactor), moved(control.errorFactor))];
  });
}

function reaches(study: Study): readonly DoubtResult[] {
  const { venue, compiled } = study.setup;
  return compiled.controls.flatMap((control, index) => {
    const state = stateOf(venue, control.id);
    if (state === 'absent' || state === 'not applicable') return [];
    const moved = (step: number): Variation => ({ scenarios: compiled.scenarios.map((scenario) => shiftedReach(scenario, index, step)) });
    return [bar(study, { kind: 'reach', id: control.id, title: control.title, between: 'acts on fewer or more of the cases', canBeChecked: false }, moved(REACH_STEP), moved(-REACH_STEP))];
  });
}

function shiftedReach(compiled: CompiledScenario, control: number, step: number): CompiledScenario {
  const shift = <U extends { readonly control: number; readonly reach: number }>(use: U): U =>
    (use.control === control ? { ...use, reach: Math.min(1, Math.max(0, use.reach + step)) } : use);
  return { ...compiled, preventive: compiled.preventive.map(shift), branches: compiled.branches.map((branch) => ({ ...branch, path: branch.path.map(shift) })) };
}

function rates(study: Study): readonly DoubtResult[] {
  const { setup } = study;
  const means = setup.rates.map(meanOf);
  return setup.compiled.scenarios.flatMap(({ scenario }, index) => {
    const rate = at(setup.rates, index);
    if (at(study.exposures, index) === 0) return [];
    const moved = (probability: number): Variation => ({ rates: means.map((mean, position) => (position === index ? gammaQuantile(probability, rate.shape, rate.rate) : mean)) });
    return [bar(study, { kind: 'rate', id: scenario.id, title: scenario.title, between: 'starts seldomer or oftener than we judge', canBeChecked: false }, moved(0.05), moved(0.95))];
  });
}

function conditionals(study: Study): readonly DoubtResult[] {
  const { setup } = study;
  return setup.compiled.scenarios.flatMap(({ scenario, branches }, index) => branches.flatMap(({ branch }, position) => {
    if (at(study.exposures, index) === 0 || branch.conditional.errorFactor === 1) return [];
    const { p, errorFactor } = branch.conditional;
    const moved = (share: number): Variation => ({
      conditionals: setup.conditionals.map((row, here) => (here === index ? row.map((value, column) => (column === position ? Math.min(1, share) : value)) : row)),
    });
    const title = `${scenario.title}: ${branch.title.charAt(0).toLowerCase()}${branch.title.slice(1)}`;
    return [bar(study, { kind: 'conditional', id: `${scenario.id}/${branch.id}`, title, between: 'follows seldomer or oftener than we judge', canBeChecked: false }, moved(p / errorFactor), moved(p * errorFactor))];
  }));
}

function burnStrength(study: Study): DoubtResult {
  const moved = (z: number): Variation => ({ weight: (severity) => study.setup.severities.weightAt(severity, z) });
  return bar(study, { kind: 'burn strength', id: 'burn-strength', title: 'How much smoke and heat a pack gives off', between: 'low or high end of the published range', canBeChecked: false }, moved(-Z95), moved(Z95));
}
