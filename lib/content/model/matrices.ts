import type { Grade, Kind } from './values';

/** From so many events a season, up to but not at `to`; null is without end. */
export interface LikelihoodBand { readonly level: number; readonly word: string; readonly from: number; readonly to: number | null; readonly onceIn: string }

/** A matrix whose grade follows from likelihood level times severity class. */
export interface ProductMatrix {
  readonly id: string;
  readonly likelihood: readonly LikelihoodBand[];
  readonly severity: readonly number[];
  readonly score: string;
  readonly grades: readonly { readonly grade: Grade; readonly from: number; readonly to: number }[];
  /** what a grade asks for */
  readonly meaning?: Readonly<Record<Grade, string>>;
  readonly rule: string;
  readonly kind: Kind;
  readonly source: string;
}

/** A matrix whose grades stand cell by cell. */
export interface GradeTable {
  readonly id: string;
  readonly title: string;
  readonly gradeWords: Readonly<Record<Grade, string>>;
  readonly levels: readonly LikelihoodBand[];
  /** cells[level − 1][severity class − 1] */
  readonly cells: readonly (readonly Grade[])[];
  readonly kind: Kind;
  readonly source: string;
}
