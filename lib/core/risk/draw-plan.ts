import type { Branch, ControlState } from '@/lib/content/model';
import { stateOf, type Venue } from '@/lib/core/answers/venue';
import { at } from '@/lib/core/at';
import { logSpread } from '@/lib/core/statistics/clipped-lognormal';
import type { CompiledScenario, CompiledUse } from './compiled-content';
import { countedUses } from './counted-uses';
import { GRADES } from './grade-matrix';
import { exposuresOf, failuresOf, type RiskSetup } from './risk-setup';

/** How a control's state turns its draw into a failure: always fails, as in place, half, or a random power (A2 to A4). */
export const FAILS = 0;
export const IN_PLACE = 1;
export const PARTLY = 2;
const UNSURE = 3;
const MODE_OF: Readonly<Record<ControlState, number>> = { 'in place': IN_PLACE, partly: PARTLY, 'not sure': UNSURE, absent: FAILS, 'not applicable': FAILS };

/** Everything a draw needs, in flat arrays: made once for a venue and its states. */
export interface DrawPlan {
  readonly slots: number;
  readonly slotOf: Int32Array;
  readonly mode: Uint8Array;
  readonly logPfd: Float64Array;
  readonly sigma: Float64Array;
  readonly anyUnsure: boolean;
  /** gamma shape of each scenario, and exposure divided by the gamma's rate: 0 where there is no exposure */
  readonly shape: Float64Array;
  readonly scale: Float64Array;
  /** uses in one row, reach and control; those of the top event of scenario i lie from topFrom[i] to where its first branch begins */
  readonly useControl: Int32Array;
  readonly useReach: Float64Array;
  readonly topFrom: Int32Array;
  /** branches of scenario i lie from branchFrom[i] to branchFrom[i + 1]; their uses from pathFrom to pathTo */
  readonly branchFrom: Int32Array;
  readonly pathFrom: Int32Array;
  readonly pathTo: Int32Array;
  /** 1 when a branch's uses go onto the top event's product, 0 when they stand for the whole path */
  readonly onTop: Uint8Array;
  /** ln of the median conditional share of each branch, and its sigma */
  readonly logShare: Float64Array;
  readonly shareSigma: Float64Array;
  /** index into `cases` of each branch */
  readonly severity: Int32Array;
  /** for each different severity: burn strength from which the class is 2, 3, 4, 5 or more */
  readonly cases: readonly Float64Array[];
  /** harm weight of class 1 to 5 at index 1 to 5; 0 stands for nothing */
  readonly weights: Float64Array;
  /** lower bounds of likelihood levels 2 and above */
  readonly levelBounds: Float64Array;
  /** grade index (0 low to 3 extreme) at (level − 1)·6 + class */
  readonly gradeAt: Uint8Array;
}

/** @param venue the setup's venue or the same with other states, inputs or exposures */
export function drawPlan(setup: RiskSetup, venue: Venue): DrawPlan {
  const { compiled, matrix } = setup;
  const modes = compiled.controls.map((control) => MODE_OF[stateOf(venue, control.id)]);
  const severities = setup.cases.of(venue).flat();
  const cases = [...new Map(severities.map((severity) => [severity.key, severity])).values()];
  const exposures = exposuresOf(compiled, venue);
  const rows = new UseRows(setup, failuresOf(compiled, venue), modes);
  const branches = compiled.scenarios.flatMap((scenario) => rows.add(scenario));
  return {
    slots: compiled.slots,
    slotOf: Int32Array.from(compiled.slotOf),
    mode: Uint8Array.from(modes),
    logPfd: Float64Array.from(compiled.controls, (control) => Math.log(control.pfd)),
    sigma: Float64Array.from(compiled.controls, (control) => logSpread(control.errorFactor)),
    anyUnsure: modes.includes(UNSURE),
    shape: Float64Array.from(setup.rates, (rate) => rate.shape),
    scale: Float64Array.from(setup.rates, (rate, index) => at(exposures, index) / rate.rate),
    ...rows.arrays(),
    logShare: Float64Array.from(branches, (branch) => Math.log(branch.conditional.p)),
    shareSigma: Float64Array.from(branches, (branch) => logSpread(branch.conditional.errorFactor)),
    severity: Int32Array.from(severities, (severity) => cases.findIndex((one) => one.key === severity.key)),
    cases: cases.map((severity) => setup.severities.thresholdsOf(severity)),
    weights: Float64Array.from([0, ...[1, 2, 3, 4, 5].map((severity) => setup.severities.weightOf(severity))]),
    levelBounds: Float64Array.from(matrix.levels.slice(1), (level) => level.from),
    gradeAt: Uint8Array.from(matrix.cells.flatMap((row) => [0, ...row.map((grade) => GRADES.indexOf(grade))])),
  };
}

/** Uses of all scenarios in one row. A control that always fails leaves its factor at 1 and is not written down. */
class UseRows {
  private readonly uses: CompiledUse[] = [];
  private readonly topFrom: number[] = [];
  private readonly branchFrom: number[] = [];
  private readonly pathFrom: number[] = [];
  private readonly onTop: number[] = [];

  constructor(private readonly setup: RiskSetup, private readonly failure: Float64Array, private readonly modes: readonly number[]) {}

  add({ preventive, branches }: CompiledScenario): readonly Branch[] {
    const { controls } = this.setup.compiled;
    const top = countedUses(preventive, this.failure, controls);
    this.topFrom.push(this.uses.length);
    this.append(preventive, top);
    this.branchFrom.push(this.onTop.length);
    for (const { path } of branches) {
      const counted = countedUses(path, this.failure, controls);
      const onTop = sameStart(counted, top, preventive.length);
      this.onTop.push(onTop ? 1 : 0);
      this.pathFrom.push(this.uses.length);
      this.append(path, onTop ? counted.slice(top.length) : counted);
    }
    return branches.map(({ branch }) => branch);
  }

  /** The uses of a top event end where its first branch begins, those of a branch where the next row begins. */
  arrays() {
    return {
      useControl: Int32Array.from(this.uses, (use) => use.control),
      useReach: Float64Array.from(this.uses, (use) => use.reach),
      topFrom: Int32Array.from(this.topFrom),
      branchFrom: Int32Array.from([...this.branchFrom, this.onTop.length]),
      pathFrom: Int32Array.from(this.pathFrom),
      pathTo: Int32Array.from(this.pathFrom, (_, branch) => this.endOf(branch)),
      onTop: Uint8Array.from(this.onTop),
    };
  }

  private endOf(branch: number): number {
    const scenario = this.branchFrom.indexOf(branch + 1);
    return (scenario >= 0 ? this.topFrom[scenario] : this.pathFrom[branch + 1]) ?? this.uses.length;
  }

  private append(uses: readonly CompiledUse[], positions: readonly number[]): void {
    for (const position of positions) {
      const use = uses[position];
      if (use !== undefined && this.modes[use.control] !== FAILS) this.uses.push(use);
    }
  }
}

/** Whether the preventive uses counted on a path are just those counted for the top event. */
function sameStart(counted: readonly number[], top: readonly number[], preventive: number): boolean {
  const preventiveCounted = counted.filter((position) => position < preventive);
  return preventiveCounted.length === top.length && preventiveCounted.every((position, index) => position === top[index]);
}
