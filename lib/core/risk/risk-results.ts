import { exposureOf, type Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import type { BranchResult, GradeShares, RiskResult, Sampled } from '@/lib/core/result';
import type { ClosedEvaluation, ClosedRisk } from './closed-form';
import type { CompiledScenario } from './compiled-content';
import { controlsInRisk } from './controls-in-risk';
import type { Draws } from './draws';
import { rankedIndices } from './ranking';
import type { RiskSetup } from './risk-setup';
import { sampledInPlace } from './sampled';

/** Today, with nothing in place, and with the open actions done: the same venue three times. */
export interface ThreeStates { readonly today: ClosedEvaluation; readonly inherent: ClosedEvaluation; readonly planned: ClosedEvaluation }

const NOTHING: Sampled = { mean: 0, se: 0, p05: 0, p50: 0, p95: 0 };

/** The ranking, most harm first. Reorders the arrays of `draws`. */
export function riskResults(setup: RiskSetup, venue: Venue, states: ThreeStates, draws: Draws): readonly RiskResult[] {
  const scenarios = setup.compiled.scenarios;
  const order = rankedIndices(states.today, scenarios.map(({ scenario }) => scenario.id));
  return order.map((index, position) => riskResult({ setup, venue, states, draws, index, rank: position + 1 }));
}

interface Ranked { readonly setup: RiskSetup; readonly venue: Venue; readonly states: ThreeStates; readonly draws: Draws; readonly index: number; readonly rank: number }

function riskResult({ setup, venue, states, draws, index, rank }: Ranked): RiskResult {
  const compiled = at(setup.compiled.scenarios, index);
  const { scenario } = compiled;
  const today = at(states.today.risks, index);
  const inherent = at(states.inherent.risks, index);
  const planned = at(states.planned.risks, index);
  const exposure = exposureOf(venue, scenario.exposureBase);
  return {
    id: scenario.id,
    title: scenario.title,
    description: scenario.description,
    rank,
    exposure,
    exposureTitle: venue.content.exposures.find((one) => one.id === scenario.exposureBase)?.title ?? scenario.exposureBase,
    grade: today.grade,
    inherentGrade: inherent.grade,
    plannedGrade: planned.grade,
    severity: today.severity,
    decidedBy: at(compiled.branches, today.deciding).branch.id,
    topFrequencyMean: today.topFrequency,
    onceInSeasons: Number.isFinite(1 / today.topFrequency) ? 1 / today.topFrequency : null,
    frequency: exposure === 0 ? NOTHING : sampledInPlace(at(draws.frequency, index)),
    harmMean: today.harm,
    harm: exposure === 0 ? NOTHING : sampledInPlace(at(draws.harm, index)),
    inherentHarm: inherent.harm,
    plannedHarm: planned.harm,
    inherentFrequency: inherent.topFrequency,
    plannedFrequency: planned.topFrequency,
    gradeShares: gradeShares(draws, index, exposure),
    rankFirstShare: exposure === 0 ? 0 : at(draws.firstCounts, index) / draws.count,
    branches: branchResults(compiled, today, planned),
    controls: controlsInRisk(setup, venue, compiled),
    learning: at(setup.rates, index).learning,
  };
}

function branchResults(compiled: CompiledScenario, today: ClosedRisk, planned: ClosedRisk): readonly BranchResult[] {
  return compiled.branches.map(({ branch }, position) => {
    const now = at(today.branches, position);
    const after = at(planned.branches, position);
    return {
      id: branch.id,
      title: branch.title,
      consequence: branch.consequence,
      frequency: now.frequency,
      plannedFrequency: after.frequency,
      severity: now.severity,
      plannedSeverity: after.severity,
      harm: now.harm,
      expectedWeight: now.expectedWeight,
      grade: now.grade,
      score: now.score,
      level: now.level,
    };
  });
}

function gradeShares(draws: Draws, index: number, exposure: number): GradeShares {
  if (exposure === 0) return { 'not applicable': 1, low: 0, moderate: 0, high: 0, extreme: 0 };
  const share = (grade: number): number => at(draws.gradeCounts, index * 4 + grade) / draws.count;
  return { 'not applicable': 0, low: share(0), moderate: share(1), high: share(2), extreme: share(3) };
}
