import type { Kind } from './values';

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

/** A figure of the pack check in its `unit`, with what it rests on. */
export interface PackFigure { readonly value: number; readonly unit: string; readonly kind: Kind; readonly source: string }

/** The voltage a cell is stored at, and the window around it that counts as stored. */
export interface StorageWindow { readonly low: number; readonly target: number; readonly high: number; readonly unit: string; readonly kind: Kind; readonly source: string; readonly schoolMay: SchoolRange; readonly note: string }
