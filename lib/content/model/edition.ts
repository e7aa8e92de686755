import type { StopCondition } from './conditions';
import type { Control } from './controls';
import type { Guidance } from './guidance';
import type { ExposureDefinition, InputDefinition } from './inputs';
import type { GradeTable, ProductMatrix } from './matrices';
import type { PackLimits } from './packs';
import type { AeglTables, AirClass, Constant, ConstantId, PhysicsId, RestVoltage, Spread } from './physics';
import type { Question, QuestionPage } from './questions';
import type { Scenario } from './scenarios';
import type { Kind, RuleInWords, SeverityClass } from './values';

/** One edition of the content. */
export interface Content {
  readonly format: 'sandbucket-content.v1';
  /** counted from 1; the first edition does not say it */
  readonly edition?: number;
  readonly version: string;
  readonly note: string;
  /** least probability of failure of any control, and of one that people carry out; z of the 95th percentile */
  readonly ranges: { readonly pfdMin: number; readonly procedureMin: number; readonly zQuantile95: number };
  readonly groups: readonly { readonly id: string; readonly title: string }[];
  readonly controls: readonly Control[];
  readonly moneyBands: readonly { readonly band: number; readonly title: string; readonly points: number }[];
  readonly effortRule: string;
  readonly severityScale: readonly { readonly class: SeverityClass; readonly people: string; readonly building: string; readonly programme: string }[];
  /** harm points by severity class */
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
  /** effort points: hours and points for money */
  readonly defaultEffortBudget: number;
  /** how a state counts, told to whoever reads the method; nothing is read out of it */
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
