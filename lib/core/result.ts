import type { Consequence, Grade, InputValue, SeverityClass } from '@/lib/content/model';
import type { ActionResult, BestSet, DoubtResult, StopResult } from './result/action-result';
import type { GradeOrNone, RiskResult, Sampled } from './result/risk-result';
import type { BatterySummary, ElectricalSummary, HeatScreening, SmokeScreening } from './result/screening-result';

export type { Grade } from '@/lib/content/model';
export type * from './result/action-result';
export type * from './result/risk-result';
export type * from './result/screening-result';

/** A number the result rests on, with where it comes from. */
export interface Assumption {
  readonly id: string;
  readonly what: string;
  readonly value: InputValue;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
  /** published, common practice or our judgement, as the content words it */
  readonly kind: string;
  readonly source: string;
}

/** An input the document did not give; what was taken instead, and why that value. */
export interface AssumedInput { readonly input: string; readonly title: string; readonly value: InputValue; readonly unit: string; readonly because: 'not sure' | 'not answered' | 'field left empty' }

/** Everything that is worked out for one document. The contract of screen, paper, command line and file. */
export interface ScoreResult {
  readonly engineVersion: string;
  readonly contentVersion: string;
  /** number of the edition of the content, counted from 1 */
  readonly contentEdition: number;
  readonly inputHash: string;
  readonly seed: number;
  readonly draws: number;
  readonly venue: string;
  readonly title: string;
  readonly note: string;
  readonly matrix: { readonly id: string; readonly title: string; readonly gradeWords: Readonly<Record<Grade, string>>; readonly levels: readonly { readonly level: number; readonly word: string; readonly from: number; readonly to: number | null; readonly onceIn: string }[]; readonly cells: readonly (readonly GradeOrNone[])[] };
  /** mean harm points per season, closed form: today, with no control at all, and once the open actions are done */
  readonly totalHarm: number;
  readonly inherentHarm: number;
  readonly plannedHarm: number;
  /** the same as totalHarm over the draws */
  readonly totalHarmDraws: Sampled;
  readonly batteryFiresPerSeason: number;
  /** mean harm points per season */
  readonly harmByConsequence: Readonly<Record<Consequence, number>>;
  /** most harm first */
  readonly risks: readonly RiskResult[];
  readonly stops: readonly StopResult[];
  /** Wh; load divided by what the circuit may carry for hours; class of the air when one lot burns on the table */
  readonly derived: { readonly storedWh: number; readonly loadShare: number; readonly chargingLotSmokeClass: SeverityClass };
  /** most harm taken away first */
  readonly actions: readonly ActionResult[];
  readonly bestSet: BestSet;
  /** widest first */
  readonly doubt: readonly DoubtResult[];
  readonly smoke: SmokeScreening;
  readonly heat: HeatScreening;
  readonly battery: BatterySummary;
  readonly electrical: ElectricalSummary;
  readonly assumedInputs: readonly AssumedInput[];
  /** ids, in the order of the content */
  readonly notSureControls: readonly string[];
  readonly assumptions: readonly Assumption[];
}
