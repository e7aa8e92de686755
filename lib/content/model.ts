/**
 * The shape of one edition of the domain content: what may go wrong, what holds it back, what is
 * asked, and every number with its kind and basis. Plain types without a library, so that the
 * calculation core can use them. `schema.ts` checks data against the same shape.
 */

/** What a number rests on, first words; a kind may go on in words ("published low and high; our judgement middle"). */
export type Kind = string;

export type ControlState = 'in place' | 'partly' | 'absent' | 'not sure' | 'not applicable';
export type SeverityClass = 1 | 2 | 3 | 4 | 5;
export type InputValue = number | string;

export interface Control {
  readonly id: string;
  readonly title: string;
  readonly role: 'prevent' | 'mitigate' | 'both';
  readonly tier: 'eliminate' | 'substitute' | 'engineer' | 'administer' | 'protect';
  /** median probability of failure on demand when in place, 0 to 1 */
  readonly pfd: number;
  /** P95 / P50, more than 1 */
  readonly errorFactor: number;
  readonly kind: Kind;
  readonly basis: string;
  readonly group: string | null;
  readonly effort: { readonly hours: number; readonly moneyBand: number };
  readonly goodLooksLike: string;
  /** inputs that change with the control when it is put in place; none in the first edition */
  readonly moves?: readonly InputMove[];
}

/** An input that an action moves: always, or only when the venue's own figure is lower or higher than `to`. */
export interface InputMove { readonly input: string; readonly to: InputValue; readonly only: 'always' | 'if lower' | 'if higher' }

/** One use of a control: the share of causes or cases it can act on, above 0 to 1. */
export interface ControlUse { readonly control: string; readonly reach: number }

export type Area = 'charging' | 'storage' | 'arena' | 'vehicle';
export type PackCount = 'one' | 'lot' | 'all' | 'damaged' | 'damagedAll' | 'transit';

export type SeverityRule =
  | { readonly fixed: SeverityClass }
  | { readonly from: 'smoke'; readonly area: Area; readonly packs: PackCount; readonly near: boolean; readonly foundLater: boolean }
  | { readonly from: 'heat'; readonly what: 'burn' | 'spread'; readonly area: Area; readonly packs: PackCount };

export type Consequence = 'people-smoke' | 'people-burn' | 'people-impact' | 'spread-room' | 'programme';

export interface Branch {
  readonly id: string;
  readonly title: string;
  readonly consequence: Consequence;
  /** median share of top events that reach this end with no mitigating control, and its error factor */
  readonly conditional: { readonly p: number; readonly errorFactor: number; readonly kind: Kind; readonly basis: string };
  readonly mitigating: readonly ControlUse[];
  readonly severity: SeverityRule;
}

export interface Scenario {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly exposureBase: string;
  /** mean events per unit of exposure with every control absent, and P95 / P50 of the gamma around it */
  readonly rate: { readonly mean: number; readonly errorFactor: number; readonly kind: Kind; readonly basis: string };
  /** share of top events that are a battery fire, 0 to 1 */
  readonly fireShare: number;
  readonly preventive: readonly ControlUse[];
  readonly branches: readonly Branch[];
}

export type CompareOp = '=' | '!=' | '<' | '<=' | '>' | '>=';
export type DerivedName = 'storedWh' | 'loadShare' | 'chargingLotSmokeClass';

/** A condition as data; nothing is ever evaluated as code. */
export type Condition =
  | { readonly control: string; readonly in: readonly ControlState[] }
  | { readonly input: string; readonly op: CompareOp; readonly value: InputValue }
  | { readonly derived: DerivedName; readonly op: CompareOp; readonly value?: number; readonly input?: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] };

export interface InputDefinition {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** a number, a word, or a formula over other inputs when the unit is a number's */
  readonly default: InputValue;
  readonly min: number | null;
  readonly max: number | null;
  readonly kind: Kind;
  /** used instead of the default when the question was shown and not known: ignorance must count against */
  readonly whenNotSure?: InputValue;
}

export interface ExposureDefinition {
  readonly id: string;
  readonly title: string;
  readonly formula: string;
  readonly kind: Kind;
  readonly basis: string;
}

export interface NumberField { readonly input: string; readonly label: string; readonly unit: string; readonly min: number; readonly max: number }
export interface AnswerOption {
  readonly id: string;
  readonly label: string;
  readonly sets: { readonly controls: Readonly<Record<string, ControlState>>; readonly inputs: Readonly<Record<string, InputValue>> };
}

interface QuestionBase {
  readonly id: string;
  readonly section: string;
  readonly text: string;
  readonly why: string;
  readonly good: string;
  readonly notSure: boolean;
  readonly source: string;
  readonly showIf?: Condition;
}
export type Question =
  | (QuestionBase & { readonly kind: 'choice'; readonly options: readonly AnswerOption[] })
  | (QuestionBase & { readonly kind: 'multi'; readonly options: readonly AnswerOption[]; readonly unticked: 'absent' })
  | (QuestionBase & { readonly kind: 'number'; readonly fields: readonly NumberField[] })
  | (QuestionBase & { readonly kind: 'text'; readonly field: { readonly input: string; readonly maxLength: number } });

export interface StopCondition {
  readonly id: string;
  readonly title: string;
  readonly when: Condition;
  readonly why: string;
  readonly settles: string;
}

export interface Spread { readonly id: string; readonly unit: string; readonly low: number; readonly mid: number; readonly high: number; readonly kind: Kind; readonly source: string }
export interface Constant { readonly id: string; readonly value: number; readonly unit: string; readonly kind: Kind; readonly source: string; readonly low: number; readonly high: number }

export type PhysicsId =
  | 'hfYield' | 'gasVolume' | 'coFraction' | 'lflVentGas' | 'peakHeatRelease' | 'radiantFraction'
  | 'releaseDuration' | 'packToPackTime' | 'burningTogether' | 'nearTime' | 'flameBase';
export type ConstantId =
  | 'molarVolume' | 'molarMassHF' | 'molarMassCO' | 'nominalCellVoltage' | 'coDoseDenominator' | 'woodIgnition'
  | 'painFlux' | 'noPainFlux' | 'burnFlux' | 'reachMin' | 'nearRefVolume' | 'nearFactorMax' | 'outdoorVolume'
  | 'outdoorAch' | 'windSpeed' | 'tempDiff' | 'closedAch' | 'continuousFactor' | 'seasonDays' | 'openSpread';

export interface AeglTables {
  /** exposure durations of the tables, minutes, rising */
  readonly durationsMin: readonly number[];
  /** ppm at each duration, by level */
  readonly HF: Readonly<Record<'1' | '2' | '3', readonly number[]>>;
  readonly CO: Readonly<Record<'2' | '3', readonly number[]>>;
  readonly rule: string;
  readonly kind: Kind;
  readonly source: string;
}

/** From mild to urgent. `leave` is no state of a pack: nobody touches it, everybody goes. The first edition ends at `isolate`. */
export type PackVerdict = 'fit' | 'watch' | 'retire' | 'isolate' | 'leave';
/** What a sign stops until it is settled; `travel` is going with the team to another place. */
export type PackUse = 'charge' | 'fly' | 'travel';
/** One measure held against one figure, yes or no, or the pack's cell type. */
export interface PackTest {
  readonly measure: string;
  readonly op: '<' | '>' | '>=' | '=';
  readonly value: number | boolean | string;
}
/** What a school may set instead, both ends allowed. */
export interface SchoolRange { readonly min: number; readonly max: number }
export interface PackFigure { readonly value: number; readonly unit: string; readonly kind: Kind; readonly source: string }
export interface StorageWindow { readonly low: number; readonly target: number; readonly high: number; readonly unit: string; readonly kind: Kind; readonly source: string; readonly schoolMay: SchoolRange; readonly note: string }

export interface PackRule extends PackTest {
  readonly id: string;
  readonly verdict: PackVerdict;
  readonly text: string;
  readonly kind: Kind;
  readonly source: string;
  /** absent: fixed */
  readonly schoolMay?: SchoolRange;
  /** empty: nothing; absent only in the first edition, which does not say */
  readonly blocks?: readonly PackUse[];
  /** the rule does not fire when this is known to hold; not known never clears it */
  readonly unless?: PackTest;
  /** "not sure" fires the rule; absent: "not sure" is a missing measure */
  readonly doubtCounts?: boolean;
}

export interface PackLimits {
  readonly rules: readonly PackRule[];
  readonly order: readonly PackVerdict[];
  readonly silentBelow: number;
  readonly rule: string;
  readonly storageCharge: StorageWindow;
  readonly full: PackFigure;
  readonly landing: PackFigure & { readonly note: string; readonly schoolMay: SchoolRange };
  readonly daysFull: PackFigure;
  /** how a check is made and what follows from it; since the second edition */
  readonly check?: PackCheck;
}

export interface PackCheck {
  readonly measures: readonly PackMeasure[];
  /** in the order they are taken; ends at the first sign of `leave` */
  readonly steps: readonly CheckStep[];
  readonly verdicts: readonly VerdictWords[];
  readonly incomplete: IncompleteCheck;
  readonly cellTypes: readonly CellType[];
  readonly alike: AlikeConditions;
  /** rest after use or charge before warmth is compared with the room, hours */
  readonly rest: PackFigure;
  readonly isolation: { readonly words: string; readonly places: readonly { readonly id: string; readonly label: string }[] };
  readonly release: ReleaseRule;
}

export interface PackMeasure {
  readonly id: string;
  readonly ask: string;
  readonly values: 'yes or no' | 'number' | 'cell type';
  readonly unit: string | null;
  /** how the figure is made where there is more than one way */
  readonly definition?: string;
  /** true when its limits hold for known cells only */
  readonly byCell?: boolean;
}
export interface CheckStep { readonly id: string; readonly title: string; readonly how: string; readonly measures: readonly string[] }
/** Words for a person; `confirm` says who must still read them. */
export interface VerdictWords { readonly verdict: PackVerdict; readonly title: string; readonly words: string; readonly confirm: string }
/** What a check comes to when one of these measures was not taken; of each list any one will do. */
export interface IncompleteCheck { readonly needs: readonly (readonly string[])[]; readonly verdict: PackVerdict; readonly blocks: readonly PackUse[]; readonly text: string; readonly kind: Kind; readonly source: string }

interface CellTypeBase { readonly id: string; readonly label: string }
export type CellType =
  /** the figures of the limits are its own */
  | (CellTypeBase & { readonly sort: 'standard'; readonly nominal: PackFigure })
  /** figures of its own, written over those of the limits */
  | (CellTypeBase & {
    readonly sort: 'own figures';
    readonly nominal: PackFigure;
    readonly full: PackFigure;
    readonly storageCharge: StorageWindow;
    readonly rules: readonly { readonly id: string; readonly value: number; readonly kind: Kind; readonly source: string; readonly text: string; readonly schoolMay?: SchoolRange }[];
  })
  | (CellTypeBase & { readonly sort: 'as standard'; readonly why: string })
  | (CellTypeBase & { readonly sort: 'out of scope'; readonly why: string });

/** Resistance is compared only between checks no further apart than this. */
export interface AlikeConditions { readonly temperature: PackFigure; readonly cellVoltage: PackFigure; readonly why: string }

/** When the officer may take a pack out of isolation again. */
export interface ReleaseRule {
  readonly by: string;
  /** cause of isolation that can be undone */
  readonly cause: string;
  readonly hoursApart: PackFigure;
  /** rules that bar release for good once they fired */
  readonly never: readonly string[];
  /** rules that may have fired in the check and are no sign of harm */
  readonly noSign: readonly string[];
  readonly words: string;
  readonly confirm: string;
}

export interface LikelihoodBand { readonly level: number; readonly word: string; readonly from: number; readonly to: number | null; readonly onceIn: string }
export interface ProductMatrix {
  readonly id: string;
  readonly likelihood: readonly LikelihoodBand[];
  readonly severity: readonly number[];
  readonly score: string;
  readonly grades: readonly { readonly grade: 'low' | 'moderate' | 'high' | 'extreme'; readonly from: number; readonly to: number }[];
  readonly rule: string;
  readonly kind: Kind;
  readonly source: string;
}

export interface RuleInWords { readonly summary: string; readonly steps: readonly string[]; readonly kind: Kind }

export interface Content {
  readonly format: 'sandbucket-content.v1';
  readonly version: string;
  readonly note: string;
  readonly ranges: { readonly pfdMin: number; readonly procedureMin: number; readonly zQuantile95: number };
  readonly groups: readonly { readonly id: string; readonly title: string }[];
  readonly controls: readonly Control[];
  readonly moneyBands: readonly { readonly band: number; readonly title: string; readonly points: number }[];
  readonly effortRule: string;
  readonly severityScale: readonly { readonly class: SeverityClass; readonly people: string; readonly building: string; readonly programme: string }[];
  readonly harmWeights: Readonly<Record<'1' | '2' | '3' | '4' | '5', number>>;
  readonly matrices: readonly ProductMatrix[];
  readonly inputs: readonly InputDefinition[];
  readonly exposures: readonly ExposureDefinition[];
  readonly scenarios: readonly Scenario[];
  readonly physics: readonly (Spread & { readonly id: PhysicsId })[];
  readonly constants: readonly (Constant & { readonly id: ConstantId })[];
  readonly models: Readonly<Record<string, unknown>>;
  readonly aegl: AeglTables;
  readonly idlh: { readonly HF: number; readonly CO: number; readonly kind: Kind; readonly source: string };
  readonly reentry: { readonly HF: number; readonly CO: number; readonly rule: string; readonly kind: Kind; readonly source: string };
  readonly smokeRule: RuleInWords;
  readonly heatRule: RuleInWords;
  readonly packCountRule: {
    readonly steps: readonly string[];
    readonly kind: Kind;
    readonly perContainment: readonly { readonly state: string; readonly low: number; readonly mid: number; readonly high: number; readonly kind: Kind; readonly basis: string }[];
    readonly note: string;
  };
  readonly packLimits: PackLimits;
  readonly defaultEffortBudget: number;
  readonly stateRules: Readonly<Record<string, string>>;
  readonly sections: readonly { readonly id: string; readonly title: string }[];
  readonly questions: readonly Question[];
  readonly stops: readonly StopCondition[];
}
