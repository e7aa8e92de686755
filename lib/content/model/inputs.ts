import type { InputValue, Kind } from './values';

/** A fact of the venue that the calculation reads, and what is taken where nobody gave it. */
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

/** How often a season something is done that can go wrong, as a formula over inputs. */
export interface ExposureDefinition {
  readonly id: string;
  readonly title: string;
  readonly formula: string;
  readonly kind: Kind;
  readonly basis: string;
}
