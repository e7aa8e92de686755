import type { SeverityClass } from '@/lib/content/model';
import type { GradeOrNone } from '@/lib/core/result';
import { at } from '@/lib/core/at';
import type { Venue } from '@/lib/core/answers/venue';
import type { CompiledScenario } from './compiled-content';
import { type CountedScenario, countedScenarios, pathProduct } from './counted-uses';
import { cellGrade, cellScore, levelOf } from './grade-matrix';
import { meanOf } from './rate';
import { exposuresOf, failuresOf, type RiskSetup } from './risk-setup';
import type { SeverityCase } from './severity';

export interface ClosedBranch {
  readonly frequency: number;
  readonly expectedWeight: number;
  readonly harm: number;
  readonly severity: SeverityClass;
  readonly level: number;
  readonly score: number;
  readonly grade: GradeOrNone;
}
export interface ClosedRisk {
  readonly topFrequency: number;
  readonly harm: number;
  readonly branches: readonly ClosedBranch[];
  /** index of the branch that decides the grade (amendments A11, A39) */
  readonly deciding: number;
  readonly grade: GradeOrNone;
  readonly severity: SeverityClass;
}
export interface ClosedEvaluation { readonly risks: readonly ClosedRisk[]; readonly totalHarm: number }

/** Figures that may be moved one at a time to see what hangs on them; the setup's own when left out. */
export interface Variation {
  /** E[X] of every control, by index */
  readonly failure?: Float64Array;
  /** exposure of each scenario, in its own unit per season */
  readonly exposures?: readonly number[];
  /** which uses count, when they are to stay as they are although figures move */
  readonly counted?: readonly CountedScenario[];
  /** mean rate per unit of exposure of each scenario */
  readonly rates?: readonly number[];
  readonly conditionals?: readonly (readonly number[])[];
  /** scenarios with other reaches */
  readonly scenarios?: readonly CompiledScenario[];
  readonly weight?: (severity: SeverityCase) => number;
}

/**
 * Mean frequencies, harms and grades in closed form for the states of a venue (amendments A6, A7, A10 to
 * A12): F = λ·exposure·Π(1 − r(1 − E[X])), H = Σ F·w̄. No draws, so nothing flips with a seed.
 * @param venue the setup's, or the same with other states, inputs or exposures
 */
export function evaluateClosed(setup: RiskSetup, venue: Venue, variation: Variation = {}): ClosedEvaluation {
  const failure = variation.failure ?? failuresOf(setup.compiled, venue);
  const scenarios = variation.scenarios ?? setup.compiled.scenarios;
  const counted = variation.counted ?? countedScenarios(setup.compiled, failure);
  const cases = setup.cases.of(venue);
  const exposures = variation.exposures ?? exposuresOf(setup.compiled, venue);
  const risks = scenarios.map((compiled, index) => closedRisk({ setup, variation, failure, compiled, index, exposure: at(exposures, index), counted: at(counted, index), cases: at(cases, index) }));
  return { risks, totalHarm: risks.reduce((sum, risk) => sum + risk.harm, 0) };
}

interface OneRisk {
  readonly setup: RiskSetup;
  readonly variation: Variation;
  readonly failure: Float64Array;
  readonly compiled: CompiledScenario;
  readonly index: number;
  readonly exposure: number;
  readonly counted: CountedScenario;
  readonly cases: readonly SeverityCase[];
}

function closedRisk({ setup, variation, failure, compiled, index, exposure, counted, cases }: OneRisk): ClosedRisk {
  const rate = variation.rates === undefined ? meanOf(at(setup.rates, index)) : at(variation.rates, index);
  const conditionals = at(variation.conditionals ?? setup.conditionals, index);
  const initiating = rate * exposure;
  const branches = compiled.branches.map(({ path }, position): ClosedBranch => {
    const severity = at(cases, position);
    const figures = setup.severities.of(severity);
    const expectedWeight = variation.weight?.(severity) ?? figures.expectedWeight;
    const frequency = initiating * pathProduct(path, at(counted.paths, position), failure) * at(conditionals, position);
    return { frequency, expectedWeight, harm: frequency * expectedWeight, severity: figures.middle, ...gradeOf(setup, exposure, frequency, figures.middle) };
  });
  const deciding = decidingBranch(branches);
  const { grade, severity } = at(branches, deciding);
  return {
    topFrequency: initiating * pathProduct(compiled.preventive, counted.top, failure),
    harm: branches.reduce((sum, branch) => sum + branch.harm, 0),
    branches,
    deciding,
    grade,
    severity,
  };
}

function gradeOf(setup: RiskSetup, exposure: number, frequency: number, severity: SeverityClass): Pick<ClosedBranch, 'level' | 'score' | 'grade'> {
  if (exposure === 0) return { level: 0, score: 0, grade: 'not applicable' };
  const level = levelOf(setup.matrix, frequency);
  return { level, score: cellScore(setup.matrix, level, severity), grade: cellGrade(setup.matrix, level, severity) };
}

/** Higher score, then higher severity, then first in order. */
function decidingBranch(branches: readonly ClosedBranch[]): number {
  let best = 0;
  branches.forEach((branch, index) => {
    const leader = at(branches, best);
    if (branch.score > leader.score || (branch.score === leader.score && branch.severity > leader.severity)) best = index;
  });
  return best;
}
