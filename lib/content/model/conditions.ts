import type { ControlState } from './controls';
import type { InputValue } from './values';

export type CompareOp = '=' | '!=' | '<' | '<=' | '>' | '>=';

/** Figures that a condition may ask for and nobody types: energy in store (Wh), load of the circuit (share), smoke class of the lot on charge. */
export type DerivedName = 'storedWh' | 'loadShare' | 'chargingLotSmokeClass';

/** A condition as data; nothing is ever evaluated as code. */
export type Condition =
  | { readonly control: string; readonly in: readonly ControlState[] }
  | { readonly input: string; readonly op: CompareOp; readonly value: InputValue; /** of a text: how many digits it holds */ readonly measure?: 'digits' }
  | { readonly derived: DerivedName; readonly op: CompareOp; readonly value?: number; readonly input?: string }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] };

/** Whether an officer may accept a stop condition that is not settled. */
export type Acceptable =
  | { readonly kind: 'never'; readonly text: string }
  | { readonly kind: 'with-paper'; readonly paper: string; readonly text: string }
  | { readonly kind: 'until'; readonly days: number; readonly replacedBy: string; readonly text: string };

/** What forbids starting while it holds, apart from every score. */
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
