import type { Condition } from './conditions';
import type { ControlState } from './controls';
import type { InputValue } from './values';

/** A number that a question asks for, with the bounds it is read in. */
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

/** A choice of a question, and the states and inputs that choosing it sets. */
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
