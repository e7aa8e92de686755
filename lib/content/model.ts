/**
 * The shape of one edition of the domain content: what may go wrong, what holds it back, what is
 * asked, and every number with its kind and basis. Plain types without a library, so that the
 * calculation core can use them. `schema.ts` checks data against the same shape.
 */
import type { Guidance } from './guidance-model';

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
  | { readonly fixed: SeverityClass; readonly basis?: string }
  | {
    readonly from: 'smoke'; readonly area: Area; readonly packs: PackCount; readonly near: boolean; readonly foundLater: boolean;
    /** inputs whose people share that air, in place of those of the area */
    readonly sharedBy?: readonly string[];
  }
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
  | { readonly input: string; readonly op: CompareOp; readonly value: InputValue; /** of a text: how many digits it holds */ readonly measure?: 'digits' }
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
  /** stands on paper only: no formula, condition or model reads it */
  readonly printed?: true;
}

export interface ExposureDefinition {
  readonly id: string;
  readonly title: string;
  readonly formula: string;
  readonly kind: Kind;
  readonly basis: string;
}

export interface NumberField {
  readonly input: string;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** how it is asked; what is stored stays in seconds, or a share of 0 to 1 */
  readonly entry?: 'minutes and seconds' | 'of ten';
  /** asked by an earlier edition: still read, no longer shown; where it is given, these fields need no value */
  readonly earlier?: { readonly replaces: readonly string[] };
  /** left empty on purpose: its default is the rule, so nothing is assumed */
  readonly mayBeEmpty?: true;
  /** a part of another number of the same question, so never more than it */
  readonly noMoreThan?: string;
}
export interface AnswerOption {
  readonly id: string;
  readonly label: string;
  readonly sets: { readonly controls: Readonly<Record<string, ControlState>>; readonly inputs: Readonly<Record<string, InputValue>> };
  /** offered by an earlier edition: still read, no longer offered; what it sets is the cautious reading today */
  readonly earlier?: true;
}

/** One line of a page of ticks, answered yes, partly, no or not sure. `sets` is what yes sets; no is absent, blank is not sure. */
export interface TickLine extends AnswerOption {
  readonly partly: { readonly label: string; readonly state: 'partly' | 'absent' };
  /** edition that added the line: a plain list of an earlier edition says nothing about it */
  readonly newIn?: number;
  /** what a tick in a plain list counts as, where the line asks for more than it used to; else as yes */
  readonly fromList?: 'not sure';
  readonly keeper?: true;
}

/** Records a question can be filled in from, to be confirmed. */
export type PrefillSource = 'site' | 'area' | 'packs' | 'sessions';

interface QuestionBase {
  readonly id: string;
  readonly section: string;
  readonly text: string;
  readonly why: string;
  readonly good: string;
  readonly notSure: boolean;
  readonly source: string;
  readonly showIf?: Condition;
  /**
   * State of its controls where it is not asked; not applicable when missing. In place where the answer
   * before says that nobody is exposed: not applicable would give such a room less credit than one where
   * nobody has asked.
   */
  readonly hiddenAs?: 'in place';
  /** what it takes to read and answer, our judgement: four words a second and a moment for each decision */
  readonly seconds?: number;
  /** for the building's caretaker: can be sent on */
  readonly keeper?: true;
  readonly prefilledFrom?: readonly PrefillSource[];
}
export type Question =
  | (QuestionBase & { readonly kind: 'choice'; readonly options: readonly AnswerOption[] })
  | (QuestionBase & { readonly kind: 'multi'; readonly options: readonly AnswerOption[]; readonly unticked: 'absent' })
  | (QuestionBase & {
    readonly kind: 'ticks';
    readonly options: readonly TickLine[];
    /** what a line is that a plain list leaves out */
    readonly unticked: 'absent';
    /** a plain list of ids, as a multi question takes, is an answer too: in it is yes, not in it is no */
    readonly acceptsListForm: true;
  })
  | (QuestionBase & { readonly kind: 'number'; readonly fields: readonly NumberField[] })
  | (QuestionBase & { readonly kind: 'text'; readonly field: { readonly input: string; readonly maxLength: number; readonly asks?: 'telephone number' | 'place' } });

/** Questions that stand on one page, in their order; as rows, what takes yes, partly, no and not sure is one table. */
export interface QuestionPage { readonly id: string; readonly title: string; readonly as: 'questions' | 'rows'; readonly questions: readonly string[] }

/** Whether an officer may accept a stop condition that is not settled. */
export type Acceptable =
  | { readonly kind: 'never'; readonly text: string }
  | { readonly kind: 'with-paper'; readonly paper: string; readonly text: string }
  | { readonly kind: 'until'; readonly days: number; readonly replacedBy: string; readonly text: string };

export interface StopCondition {
  readonly id: string;
  readonly title: string;
  readonly when: Condition;
  readonly why: string;
  readonly settles: string;
  /** none in the first edition, where an officer could accept any */
  readonly acceptable?: Acceptable;
  /** who must still read its words */
  readonly confirm?: string;
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
  /** the rule whose figure this one takes, also a school's own or that of another kind of cell */
  readonly follows?: string;
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
export interface CheckStep {
  readonly id: string;
  readonly title: string;
  readonly how: string;
  readonly measures: readonly string[];
  /** somebody handles the pack for it: not asked once the pack is to be isolated */
  readonly handles: boolean;
}
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
    readonly rules: readonly { readonly id: string; readonly value: number; readonly kind: Kind; readonly source: string; readonly schoolMay?: SchoolRange }[];
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
  /** verdicts that bar release for good, once one of their rules fired */
  readonly neverAfter: readonly PackVerdict[];
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
  /** what a grade asks for */
  readonly meaning?: Readonly<Record<'low' | 'moderate' | 'high' | 'extreme', string>>;
  readonly rule: string;
  readonly kind: Kind;
  readonly source: string;
}

export interface GradeTable {
  readonly id: string;
  readonly title: string;
  readonly gradeWords: Readonly<Record<'low' | 'moderate' | 'high' | 'extreme', string>>;
  readonly levels: readonly LikelihoodBand[];
  /** cells[level − 1][severity class − 1] */
  readonly cells: readonly (readonly ('low' | 'moderate' | 'high' | 'extreme')[])[];
  readonly kind: Kind;
  readonly source: string;
}

/** State of charge, per cent, of a cell at rest, linear between the points. */
export interface RestVoltage { readonly points: readonly { readonly volts: number; readonly charge: number }[]; readonly rule: string; readonly kind: Kind; readonly source: string }

/** Air changes an hour for somebody who knows the windows, not the figure; the option of the same id sets `mid`. */
export interface AirClass { readonly id: string; readonly title: string; readonly low: number; readonly mid: number; readonly high: number; readonly unit: string; readonly kind: Kind; readonly source: string }

export interface RuleInWords { readonly summary: string; readonly steps: readonly string[]; readonly kind: Kind }

export interface Content {
  readonly format: 'sandbucket-content.v1';
  /** counted from 1; the first edition does not say it */
  readonly edition?: number;
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
  readonly models: Readonly<Record<string, unknown>> & {
    readonly timeToAegl?: { readonly compares: 'whole exposure'; readonly rule: string };
    /** the box of moving air outdoors is never smaller than the room that the same place would be indoors */
    readonly outdoorAir?: { readonly volume: 'at least the room'; readonly rule: string };
  };
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
  /** parts that the first edition does not have */
  readonly pages?: readonly QuestionPage[];
  readonly tableMatrices?: readonly GradeTable[];
  readonly restVoltage?: RestVoltage;
  readonly airClasses?: readonly AirClass[];
  /** what to do in one situation each; none in the first edition */
  readonly guidance?: Guidance;
}
