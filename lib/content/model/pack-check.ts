import type { PackFigure, PackUse, PackVerdict, SchoolRange, StorageWindow } from './pack-parts';
import type { Kind } from './values';

/** How a check is made, and what follows from it. */
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

/** One thing that is looked at or measured. */
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

/** Measures that are taken together. */
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

/** Kinds of cells by their full voltage. */
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
