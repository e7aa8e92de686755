import type { Consequence, Content } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { numberInput, stateOf, type Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import { assumptionsOf } from '@/lib/core/assumptions';
import { batterySummary } from '@/lib/core/battery/summary';
import { SET_DRAWS } from '@/lib/core/best-sets';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';
import { actionStudy } from '@/lib/core/risk/action-results';
import { bestSetResult } from '@/lib/core/risk/best-set-result';
import type { ClosedEvaluation } from '@/lib/core/risk/closed-form';
import { derivedOf, electricalSummary } from '@/lib/core/risk/derived';
import { doubts, sortedByWidth } from '@/lib/core/risk/doubt';
import { drawPlan } from '@/lib/core/risk/draw-plan';
import { runDraws } from '@/lib/core/risk/draws';
import { inputDoubts } from '@/lib/core/risk/input-doubts';
import { riskResults } from '@/lib/core/risk/risk-results';
import { riskSetup, type RiskSetup } from '@/lib/core/risk/risk-setup';
import { sampledInPlace } from '@/lib/core/risk/sampled';
import { heatScreening, smokeScreening } from '@/lib/core/risk/screening';
import { stopsOf } from '@/lib/core/risk/stops';
import { threeStates } from '@/lib/core/risk/three-states';
import { ENGINE_VERSION } from '@/lib/core/version';

export interface ScoreOptions {
  /** whole number, 0 to 4,294,967,295 */
  readonly seed: number;
  /** 2 or more */
  readonly draws: number;
  /** fingerprint of the scored parts of the document, printed with the result */
  readonly inputHash: string;
}

/**
 * Scores a venue: stop conditions, ranking with its uncertainty, what to do first, what to find out, smoke
 * and heat of this room, and every assumption. Pure: the same document, content and options give the
 * same result to the last digit.
 * @param document checked against the content beforehand
 * @throws on a fault of the content or of ours, never on an answer
 */
export function score(content: Content, document: AssessmentDocument, options: ScoreOptions): ScoreResult {
  const venue = resolveVenue(content, document);
  const setup = riskSetup(venue, document);
  const states = threeStates(setup, document.planned ?? []);
  const plan = drawPlan(setup, venue);
  const actions = actionStudy(setup, plan, options);
  const draws = runDraws(plan, options.draws, options.seed, actions.observe);
  const totals = draws.total.slice(0, Math.min(SET_DRAWS, options.draws));
  return {
    engineVersion: ENGINE_VERSION,
    contentVersion: content.version,
    contentEdition: content.edition ?? 1,
    inputHash: options.inputHash,
    seed: options.seed,
    draws: options.draws,
    venue: document.id,
    title: document.title,
    note: content.note,
    matrix: { id: setup.matrix.id, title: setup.matrix.title, gradeWords: setup.matrix.gradeWords, levels: setup.matrix.levels, cells: setup.matrix.cells },
    totalHarm: states.today.totalHarm,
    inherentHarm: states.inherent.totalHarm,
    plannedHarm: states.planned.totalHarm,
    totalHarmDraws: sampledInPlace(draws.total),
    batteryFiresPerSeason: batteryFires(setup, states.today),
    harmByConsequence: harmByConsequence(setup, states.today),
    risks: riskResults(setup, venue, states, draws),
    stops: stopsOf(venue, setup.physics).map((stop) => ({ id: stop.id, title: stop.title, why: stop.why, settledBy: stop.settles })),
    derived: derivedOf(venue, setup.physics),
    actions: actions.results(),
    bestSet: bestSetResult(setup, document.effortBudget ?? content.defaultEffortBudget, totals, options.seed),
    doubt: sortedByWidth([...doubts(setup), ...inputDoubts(venue, document)]),
    smoke: smokeScreening(venue, setup.physics),
    heat: heatScreening(venue, setup.physics),
    battery: battery(venue),
    electrical: electricalSummary(venue, setup.physics),
    assumedInputs: venue.assumedInputs,
    notSureControls: content.controls.filter((control) => stateOf(venue, control.id) === 'not sure').map((control) => control.id),
    assumptions: assumptionsOf(venue, setup.matrix),
  };
}

/** Σ top frequency · share that is a battery fire (amendment A15). */
export function batteryFires(setup: RiskSetup, evaluation: ClosedEvaluation): number {
  return setup.compiled.scenarios.reduce((sum, { scenario }, index) => sum + at(evaluation.risks, index).topFrequency * scenario.fireShare, 0);
}

function harmByConsequence(setup: RiskSetup, evaluation: ClosedEvaluation): Readonly<Record<Consequence, number>> {
  const harm: Record<Consequence, number> = { 'people-smoke': 0, 'people-burn': 0, 'people-impact': 0, 'spread-room': 0, programme: 0 };
  setup.compiled.scenarios.forEach(({ branches }, index) => branches.forEach(({ branch }, position) => {
    harm[branch.consequence] += at(at(evaluation.risks, index).branches, position).harm;
  }));
  return harm;
}

function battery(venue: Venue) {
  return batterySummary({
    cells: numberInput(venue, 'cells'),
    capacityMah: numberInput(venue, 'capacityMah'),
    packWh: numberInput(venue, 'packWh'),
    packs: numberInput(venue, 'packs'),
    packsStored: numberInput(venue, 'packsStored'),
  });
}
