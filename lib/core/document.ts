import type { ControlState, Grade, InputValue } from '@/lib/content/model';

/** One page of ticks, line by line; a line that is left out has not been answered. */
export type TickAnswer = Readonly<Record<string, 'yes' | 'partly' | 'no' | 'not sure'>>;

/** An answer: option id, list of option ids, numbers by input, ticks by line, text, or "not sure". */
export type Answer = string | readonly string[] | Readonly<Record<string, number>> | TickAnswer;

/** What a school's own record says of one scenario. */
export interface RecordedExposure {
  /** events seen, whole, 0 or more */
  readonly events: number;
  /** exposure in which they were seen, in the scenario's own unit, above 0 */
  readonly exposure: number;
  /** mean effective failure of the preventive controls while the record was made; today's when missing */
  readonly preventiveProduct?: number;
}

/** The school's own risk matrix: a grade for each likelihood level (rows) and severity class (columns 1 to 5). */
export interface OwnMatrix {
  readonly title: string;
  /** rising lower bounds of the likelihood levels in events per season; the first is 0 */
  readonly from: readonly number[];
  readonly words: readonly string[];
  /** cells[level - 1][class - 1] */
  readonly cells: readonly (readonly Grade[])[];
}

export type MatrixChoice = 'five-by-five' | 'mil-std-882e' | 'three-by-three' | OwnMatrix;

/** What the calculation reads of a `sandbucket-assessment.v1` document, already checked. */
export interface AssessmentDocument {
  readonly id: string;
  readonly title: string;
  readonly answers: Readonly<Record<string, Answer>>;
  readonly notSureTicks?: Readonly<Record<string, readonly string[]>>;
  readonly exposures?: Readonly<Record<string, number>>;
  readonly inputs?: Readonly<Record<string, InputValue>>;
  /** a control's state written over what the answers say */
  readonly states?: Readonly<Record<string, ControlState>>;
  readonly record?: Readonly<Record<string, RecordedExposure>>;
  readonly planned?: readonly string[];
  readonly effortBudget?: number;
  readonly matrix?: MatrixChoice;
  readonly seed?: number;
  readonly contentVersion?: string;
}
