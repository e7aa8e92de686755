import type { Area, Consequence, ControlState, InputValue, SeverityClass } from '@/lib/content/model';

/** The four grades, drawn everywhere with word, shape and colour; a matrix may use its own word for each. */
export type Grade = 'low' | 'moderate' | 'high' | 'extreme';
/** A risk whose exposure is zero has no grade: it is not low, it does not apply. */
export type GradeOrNone = Grade | 'not applicable';
export type GradeShares = Readonly<Record<GradeOrNone, number>>;

/** Of the draws: mean, its standard error, and the 5th, 50th and 95th percentile. */
export interface Sampled { readonly mean: number; readonly se: number; readonly p05: number; readonly p50: number; readonly p95: number }

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
  readonly expectedWeight: number;
  readonly grade: GradeOrNone;
  readonly score: number;
  readonly level: number;
}

/** How a school's own record moved the rate of a scenario. All per unit of exposure with every control absent. */
export interface RateLearning {
  readonly prior: { readonly mean: number; readonly p05: number; readonly p95: number };
  readonly record: { readonly events: number; readonly exposure: number; readonly preventiveProduct: number; readonly assumedToday: boolean };
  readonly posterior: { readonly mean: number; readonly p05: number; readonly p95: number };
}

export interface RiskResult {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly rank: number;
  readonly exposure: number;
  readonly exposureTitle: string;
  readonly grade: GradeOrNone;
  readonly inherentGrade: GradeOrNone;
  readonly plannedGrade: GradeOrNone;
  readonly severity: SeverityClass;
  /** id of the branch that decides the grade */
  readonly decidedBy: string;
  readonly topFrequencyMean: number;
  /** 1 / topFrequencyMean; null when the frequency is zero or too small to have an inverse */
  readonly onceInSeasons: number | null;
  readonly frequency: Sampled;
  readonly harmMean: number;
  readonly harm: Sampled;
  readonly inherentHarm: number;
  readonly plannedHarm: number;
  readonly inherentFrequency: number;
  readonly plannedFrequency: number;
  readonly gradeShares: GradeShares;
  /** share of draws in which this risk has the most harm, 0 to 1 */
  readonly rankFirstShare: number;
  readonly branches: readonly BranchResult[];
  readonly controls: readonly ControlInRisk[];
  readonly learning: RateLearning | null;
}

export interface StopResult { readonly id: string; readonly title: string; readonly why: string; readonly settledBy: string }

export interface ActionResult {
  readonly control: string;
  readonly title: string;
  readonly goodLooksLike: string;
  readonly state: ControlState;
  /** fall of total mean harm if this control were in place, everything else as today */
  readonly harmReduction: number;
  /** harmReduction as a share of today's total, 0 to 1 */
  readonly share: number;
  /** 5th and 95th percentile of the paired difference over the same draws */
  readonly interval: { readonly p05: number; readonly p95: number };
  /** effort points: hours plus points of the money band, at least 1 */
  readonly effort: number;
  readonly hours: number;
  readonly moneyBand: number;
  /** ids of stop conditions that would no longer hold */
  readonly clearsStops: readonly string[];
}

export interface BestSet {
  readonly budget: number;
  readonly controls: readonly string[];
  readonly effort: number;
  readonly harmBefore: number;
  readonly harmAfter: number;
  readonly harmReduction: number;
  /** harmReduction / harmBefore, 0 to 1 */
  readonly cut: number;
  /** of the draws, P5 to P95 of the share taken away */
  readonly cutInterval: { readonly p05: number; readonly p95: number };
  /** false when the search was given up, so that a better set may exist */
  readonly complete: boolean;
}

/** One bar of the tornado: total harm with one thing at its low and at its high end, all else as today. */
export interface DoubtResult {
  readonly kind: 'answer' | 'input' | 'control' | 'reach' | 'rate' | 'conditional' | 'burn strength';
  readonly id: string;
  readonly title: string;
  /** what is varied, in words, e.g. "in place, or absent" */
  readonly between: string;
  readonly harmLow: number;
  readonly harmHigh: number;
  /** something a person can go and look up or measure, not a figure of ours */
  readonly canBeChecked: boolean;
}

export interface GasLevel {
  readonly massMg: number;
  readonly peakPpm: number;
  readonly secondsToAegl2: number | null;
  readonly secondsToAegl3: number | null;
  readonly clearingMinutes: number;
}
export interface SmokeLevel {
  readonly HF: GasLevel;
  readonly CO: GasLevel;
  /** fractional effective dose of CO over the stay */
  readonly coDose: number;
  readonly smokeClass: SeverityClass;
  readonly nearFieldPpm: number;
  readonly ventGasL: number;
  readonly flammableBelowL: number;
  readonly roomShareOfLfl: number;
}
export interface SmokeCase {
  readonly area: Area;
  readonly packs: number;
  readonly volume: number;
  readonly airChanges: number;
  readonly releaseSeconds: number;
  readonly evacuationSeconds: number;
  readonly levels: { readonly low: SmokeLevel; readonly mid: SmokeLevel; readonly high: SmokeLevel };
}
export interface SmokeScreening { readonly one: SmokeCase; readonly lot: SmokeCase; readonly allOnTable: SmokeCase; readonly storeLot: SmokeCase; readonly vehicle: SmokeCase }

export interface HeatLevel {
  /** heat release of the packs that burn together, kW */
  readonly Q_kW: number;
  /** m */
  readonly flameHeight: number;
  /** distance within which wood is taken to ignite, m */
  readonly ignitionDistance: number;
  /** distance within which bare skin hurts, m */
  readonly painDistance: number;
}
export interface HeatCase { readonly low: HeatLevel; readonly mid: HeatLevel; readonly high: HeatLevel }
export interface HeatScreening { readonly one: HeatCase; readonly lot: HeatCase }

export interface BatterySummary {
  readonly packWh: number;
  readonly airClass: 'carry-on' | 'approval' | 'forbidden';
  readonly totalWh: number;
  readonly storedWh: number;
  /** charge current at 1C, A */
  readonly currentAt1C: number;
  /** pins of the balance plug: cells + 1 */
  readonly balancePins: number;
}
export interface ElectricalSummary {
  readonly loadWatts: number;
  readonly allowedWatts: number;
  /** load divided by what the circuit may carry for hours */
  readonly loadShare: number;
}

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
  readonly totalHarm: number;
  readonly inherentHarm: number;
  readonly plannedHarm: number;
  readonly totalHarmDraws: Sampled;
  readonly batteryFiresPerSeason: number;
  readonly harmByConsequence: Readonly<Record<Consequence, number>>;
  readonly risks: readonly RiskResult[];
  readonly stops: readonly StopResult[];
  readonly derived: { readonly storedWh: number; readonly loadShare: number; readonly chargingLotSmokeClass: SeverityClass };
  readonly actions: readonly ActionResult[];
  readonly bestSet: BestSet;
  readonly doubt: readonly DoubtResult[];
  readonly smoke: SmokeScreening;
  readonly heat: HeatScreening;
  readonly battery: BatterySummary;
  readonly electrical: ElectricalSummary;
  readonly assumedInputs: readonly AssumedInput[];
  readonly notSureControls: readonly string[];
  readonly assumptions: readonly Assumption[];
}
