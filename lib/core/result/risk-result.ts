import type { Consequence, ControlState, Grade, SeverityClass } from '@/lib/content/model';

/** A risk whose exposure is zero has no grade: it is not low, it does not apply. */
export type GradeOrNone = Grade | 'not applicable';
export type GradeShares = Readonly<Record<GradeOrNone, number>>;

/** Of the draws: mean, its standard error, and the 5th, 50th and 95th percentile. */
export interface Sampled { readonly mean: number; readonly se: number; readonly p05: number; readonly p50: number; readonly p95: number }

/** One use of a control, with what it does there today. */
export interface ControlInRisk {
  readonly control: string;
  readonly title: string;
  readonly state: ControlState;
  /** E[X], 0 to 1 */
  readonly meanFailure: number;
  /** what it does here */
  readonly part: 'prevent' | 'mitigate';
  /** branch id when it mitigates, else null */
  readonly branch: string | null;
  readonly reach: number;
  /** 1 − reach·(1 − E[X]), 0 to 1 */
  readonly effectiveFailure: number;
  /** false when another control of its group already counts on this path */
  readonly counts: boolean;
}

/** One way an event of a risk may end. */
export interface BranchResult {
  readonly id: string;
  readonly title: string;
  readonly consequence: Consequence;
  /** mean events per season, closed form */
  readonly frequency: number;
  /** events per season once the open actions are done */
  readonly plannedFrequency: number;
  readonly severity: SeverityClass;
  /** severity class once the open actions are done */
  readonly plannedSeverity: SeverityClass;
  /** frequency · expectedWeight, harm points per season */
  readonly harm: number;
  /** mean harm points of one such event over the burn strengths */
  readonly expectedWeight: number;
  readonly grade: GradeOrNone;
  /** the matrix's own, by which branches are compared; 0 without exposure */
  readonly score: number;
  /** likelihood level of the matrix, 1 the rarest; 0 without exposure */
  readonly level: number;
}

/** How a school's own record moved the rate of a scenario. All per unit of exposure with every control absent. */
export interface RateLearning {
  readonly prior: { readonly mean: number; readonly p05: number; readonly p95: number };
  readonly record: { readonly events: number; readonly exposure: number; readonly preventiveProduct: number; readonly assumedToday: boolean };
  readonly posterior: { readonly mean: number; readonly p05: number; readonly p95: number };
}

/** One risk: today, with no control at all (inherent), and once the open actions are done (planned). */
export interface RiskResult {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** from 1, most harm first */
  readonly rank: number;
  /** per season, in the unit that `exposureTitle` names */
  readonly exposure: number;
  readonly exposureTitle: string;
  readonly grade: GradeOrNone;
  readonly inherentGrade: GradeOrNone;
  readonly plannedGrade: GradeOrNone;
  readonly severity: SeverityClass;
  /** id of the branch that decides the grade */
  readonly decidedBy: string;
  /** mean events per season, closed form */
  readonly topFrequencyMean: number;
  /** 1 / topFrequencyMean; null when the frequency is zero or too small to have an inverse */
  readonly onceInSeasons: number | null;
  /** events per season over the draws */
  readonly frequency: Sampled;
  /** harm points per season, closed form */
  readonly harmMean: number;
  /** harm points per season over the draws */
  readonly harm: Sampled;
  readonly inherentHarm: number;
  readonly plannedHarm: number;
  readonly inherentFrequency: number;
  readonly plannedFrequency: number;
  /** share of the draws with each grade, 0 to 1 */
  readonly gradeShares: GradeShares;
  /** share of draws in which this risk has the most harm, 0 to 1 */
  readonly rankFirstShare: number;
  readonly branches: readonly BranchResult[];
  readonly controls: readonly ControlInRisk[];
  readonly learning: RateLearning | null;
}
