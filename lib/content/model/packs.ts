import type { PackCheck } from './pack-check';
import type { PackFigure, PackTest, PackUse, PackVerdict, SchoolRange, StorageWindow } from './pack-parts';
import type { Kind } from './values';

/** A sign of harm, the verdict it leads to and what it stops meanwhile. */
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

/** The figures of the pack check, and the verdicts in the order of their urgency. */
export interface PackLimits {
  readonly rules: readonly PackRule[];
  readonly order: readonly PackVerdict[];
  /** V; a cell that reads less gives no sign and has a rule of its own */
  readonly silentBelow: number;
  readonly rule: string;
  readonly storageCharge: StorageWindow;
  readonly full: PackFigure;
  readonly landing: PackFigure & { readonly note: string; readonly schoolMay: SchoolRange };
  readonly daysFull: PackFigure;
  /** how a check is made and what follows from it; since the second edition */
  readonly check?: PackCheck;
}
