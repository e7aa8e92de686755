import type { InputValue, Kind } from './values';

export type ControlState = 'in place' | 'partly' | 'absent' | 'not sure' | 'not applicable';

/** A means that holds a risk back. */
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
  /** of one group only one control counts on a path: they fail together */
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
