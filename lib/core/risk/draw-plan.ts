import { stateOf, type Venue } from '@/lib/core/answers/venue';
import type { CompiledUse } from './compiled-content';
import { countedUses } from './counted-uses';
import { GRADES } from './grade-matrix';
import { failuresOf, type RiskSetup } from './risk-setup';
import { severityCase } from './severity';

const Z95 = 1.6448536269514722;

/** How a control's state turns its draw into a failure: always fails, as in place, half, or a random power (A2 to A4). */
export const FAILS = 0;
export const IN_PLACE = 1;
export const PARTLY = 2;
export const UNSURE = 3;

/** One use in a product: the factor is 1 − reach + reach·X. */
export interface UseList { readonly control: Int32Array; readonly reach: Float64Array }

export interface DrawBranch {
  /** ln of the median conditional share, and its sigma */
  readonly logP: number;
  readonly sigma: number;
  /** true when `uses` are to be multiplied onto the top event's own product, false when they stand for the whole path */
  readonly onTop: boolean;
  readonly uses: UseList;
  /** index into `cases` */
  readonly severity: number;
}
export interface DrawScenario {
  readonly shape: number;
  /** exposure divided by the rate of the gamma; 0 where there is no exposure */
  readonly scale: number;
  readonly top: UseList;
  readonly branches: readonly DrawBranch[];
}

/** Everything a draw needs, in flat arrays: made once for a venue and its states. */
export interface DrawPlan {
  readonly slots: number;
  readonly slotOf: Int32Array;
  readonly mode: Uint8Array;
  readonly logPfd: Float64Array;
  readonly sigma: Float64Array;
  readonly anyUnsure: boolean;
  readonly scenarios: readonly DrawScenario[];
  /** for each different severity: burn strength from which the class is 2, 3, 4, 5 or more */
  readonly cases: readonly Float64Array[];
  /** harm weight of class 1 to 5 at index 1 to 5 */
  readonly weights: Float64Array;
  /** lower bounds of likelihood levels 2 and above */
  readonly levelBounds: Float64Array;
  /** grade index (0 low to 3 extreme) at (level − 1)·6 + class */
  readonly gradeAt: Uint8Array;
}

/** @param venue the setup's venue or the same with other states */
export function drawPlan(setup: RiskSetup, venue: Venue): DrawPlan {
  const { compiled, matrix } = setup;
  const failure = failuresOf(compiled, venue);
  const cases = new Map<string, { readonly index: number; readonly thresholds: Float64Array }>();
  const caseOf = (rule: Parameters<typeof severityCase>[2]): number => {
    const severity = severityCase(venue, setup.physics, rule);
    const known = cases.get(severity.key);
    if (known !== undefined) return known.index;
    const made = { index: cases.size, thresholds: Float64Array.from(setup.severities.of(severity).thresholds) };
    cases.set(severity.key, made);
    return made.index;
  };
  const scenarios = compiled.scenarios.map(({ preventive, branches }, index): DrawScenario => {
    const top = countedUses(preventive, failure, compiled.controls);
    const rate = setup.rates[index];
    if (rate === undefined) throw new Error('a scenario has no rate');
    return {
      shape: rate.shape,
      scale: (setup.exposures[index] ?? 0) / rate.rate,
      top: useList(top.map((position) => preventive[position] as CompiledUse)),
      branches: branches.map(({ branch, path }): DrawBranch => {
        const counted = countedUses(path, failure, compiled.controls);
        const onTop = sameStart(counted, top, preventive.length);
        return {
          logP: Math.log(branch.conditional.p),
          sigma: Math.log(branch.conditional.errorFactor) / Z95,
          onTop,
          uses: useList((onTop ? counted.slice(top.length) : counted).map((position) => path[position] as CompiledUse)),
          severity: caseOf(branch.severity),
        };
      }),
    };
  });
  const modes = compiled.controls.map((control) => ({ 'in place': IN_PLACE, partly: PARTLY, 'not sure': UNSURE, absent: FAILS, 'not applicable': FAILS })[stateOf(venue, control.id)]);
  return {
    slots: compiled.slots,
    slotOf: Int32Array.from(compiled.slotOf),
    mode: Uint8Array.from(modes),
    logPfd: Float64Array.from(compiled.controls, (control) => Math.log(control.pfd)),
    sigma: Float64Array.from(compiled.controls, (control) => Math.log(control.errorFactor) / Z95),
    anyUnsure: modes.includes(UNSURE),
    scenarios,
    cases: [...cases.values()].map((one) => one.thresholds),
    weights: Float64Array.from([0, 1, 2, 3, 4, 5], (severity) => setup.severities.weightOf(severity)),
    levelBounds: Float64Array.from(matrix.levels.slice(1), (level) => level.from),
    gradeAt: Uint8Array.from(matrix.cells.flatMap((row) => [0, ...row.map((grade) => GRADES.indexOf(grade))])),
  };
}

function useList(uses: readonly CompiledUse[]): UseList {
  return { control: Int32Array.from(uses, (use) => use.control), reach: Float64Array.from(uses, (use) => use.reach) };
}

/** Whether the preventive uses counted on a path are just those counted for the top event. */
function sameStart(counted: readonly number[], top: readonly number[], preventive: number): boolean {
  const preventiveCounted = counted.filter((position) => position < preventive);
  return preventiveCounted.length === top.length && preventiveCounted.every((position, index) => position === top[index]);
}
