import { bowTie } from '@/lib/charts/bow-tie-model';
import { bowTieScene, threadScene } from '@/lib/charts/bow-tie';
import { effortScene } from '@/lib/charts/effort-curve';
import { frequencyRulerScene, frequencyScaleScene } from '@/lib/charts/frequency-ruler';
import { heatScene } from '@/lib/charts/heat-distances';
import { riskMatrixScene } from '@/lib/charts/risk-matrix';
import { NARROW, type Scene, WIDE } from '@/lib/charts/scene';
import { smokeScene } from '@/lib/charts/smoke-curve';
import { smokeThresholds } from '@/lib/charts/smoke-points';
import { tornadoScene } from '@/lib/charts/tornado';
import { edition1 } from '@/lib/content/edition-1';
import type { ScoreResult } from '@/lib/core/result';
import { meanFailure } from '@/lib/core/risk/mean-failure';
import { REFERENCE_VENUES, scoreReference } from '@/tests/support/reference-venues';

export const inPlaceFailure = Object.fromEntries(edition1.controls.map((control) => [control.id, meanFailure(control, 'in place')]));
export const thresholds = smokeThresholds(edition1);

/** The reference venues as the engine scores them, each with its best set as the open actions. */
export const results: readonly ScoreResult[] = REFERENCE_VENUES.map((venue) => scoreReference(venue, 200, { planned: scoreReference(venue, 50).bestSet.controls }));

const FIRES = ['one', 'lot', 'allOnTable', 'storeLot', 'vehicle'] as const;
const WIDTHS = [WIDE, NARROW] as const;

/** Every scene of a venue, by a name that says which. */
export function scenesOf(result: ScoreResult): readonly { readonly name: string; readonly scene: Scene }[] {
  const ties = result.risks.map((risk) => bowTie({ risk, first: result.bestSet.controls, inPlaceFailure }));
  return [
    { name: 'matrix', scene: riskMatrixScene(result) },
    { name: 'scale', scene: frequencyScaleScene() },
    ...result.risks.map((risk) => ({ name: `ruler ${risk.id}`, scene: frequencyRulerScene(risk.topFrequencyMean, risk.frequency) })),
    ...ties.map((tie) => ({ name: `bow tie ${tie.risk.id}`, scene: bowTieScene(tie) })),
    ...ties.flatMap((tie) => tie.branches.map((branch) => ({ name: `thread ${tie.risk.id} ${branch.branch.id}`, scene: threadScene(branch, 'thread') }))),
    ...WIDTHS.flatMap((width) => [
      ...FIRES.map((fire) => ({ name: `smoke ${fire} ${width}`, scene: smokeScene(result.smoke[fire], thresholds, width) })),
      { name: `heat one ${width}`, scene: heatScene(result.heat.one, { person: 1, combustible: 0.3, clearHeight: 0.5 }, width) },
      { name: `heat lot ${width}`, scene: heatScene(result.heat.lot, { person: 0.1, combustible: 0.05, clearHeight: 3 }, width) },
      { name: `heat bare ${width}`, scene: heatScene(result.heat.lot, { person: null, combustible: null, clearHeight: null }, width) },
      { name: `effort ${width}`, scene: effortScene([result.bestSet], result.bestSet.budget, width) },
      { name: `tornado ${width}`, scene: tornadoScene(result.doubt, result.totalHarm, width) },
    ]),
  ];
}
