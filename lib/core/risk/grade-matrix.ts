import type { Content, ProductMatrix } from '@/lib/content/model';
import type { MatrixChoice, OwnMatrix } from '@/lib/core/document';
import type { Grade } from '@/lib/core/result';
import { MIL_STD_882E, THREE_BY_THREE, type TableMatrix } from '@/lib/reference/risk-matrices';

export const GRADES: readonly Grade[] = ['low', 'moderate', 'high', 'extreme'];

/** A matrix ready for use: which level a frequency is, and grade and score of each level and class. */
export interface GradeMatrix {
  readonly id: string;
  readonly title: string;
  readonly gradeWords: Readonly<Record<Grade, string>>;
  readonly levels: readonly { readonly level: number; readonly word: string; readonly from: number; readonly to: number | null; readonly onceIn: string }[];
  /** cells[level − 1][class − 1] */
  readonly cells: readonly (readonly Grade[])[];
  /** scores[level − 1][class − 1]; a table without products scores by its grade */
  readonly scores: readonly (readonly number[])[];
}

const PLAIN_WORDS: Readonly<Record<Grade, string>> = { low: 'low', moderate: 'moderate', high: 'high', extreme: 'extreme' };

/**
 * The matrix that a document chooses; the content's own five by five when it chooses none.
 * @throws when the content has no matrix: a fault of the content
 */
export function gradeMatrix(content: Content, choice: MatrixChoice | undefined): GradeMatrix {
  if (choice === undefined || choice === 'five-by-five') return fromProducts(productMatrixOf(content));
  if (choice === 'mil-std-882e') return fromTable(MIL_STD_882E);
  if (choice === 'three-by-three') return fromTable(THREE_BY_THREE);
  return fromOwn(choice);
}

/**
 * Likelihood level of a frequency; the lower bound of a band belongs to it (amendment A11).
 * @param frequency events per season, 0 or more
 * @returns 1 to the number of levels
 */
export function levelOf(matrix: GradeMatrix, frequency: number): number {
  let level = 1;
  for (const band of matrix.levels) if (frequency >= band.from) level = band.level;
  return level;
}

export function cellGrade(matrix: GradeMatrix, level: number, severity: number): Grade {
  const grade = matrix.cells[level - 1]?.[severity - 1];
  if (grade === undefined) throw new Error(`matrix ${matrix.id} has no cell ${level}, ${severity}`);
  return grade;
}

export function cellScore(matrix: GradeMatrix, level: number, severity: number): number {
  const score = matrix.scores[level - 1]?.[severity - 1];
  if (score === undefined) throw new Error(`matrix ${matrix.id} has no cell ${level}, ${severity}`);
  return score;
}

function productMatrixOf(content: Content): ProductMatrix {
  const matrix = content.matrices.find((one) => one.id === 'five-by-five');
  if (matrix === undefined) throw new Error('the content has no five-by-five matrix');
  return matrix;
}

function fromProducts(matrix: ProductMatrix): GradeMatrix {
  const scores = matrix.likelihood.map((band) => matrix.severity.map((severity) => band.level * severity));
  const cells = scores.map((row) => row.map((score) => {
    const band = matrix.grades.find((grade) => score >= grade.from && score <= grade.to);
    if (band === undefined) throw new Error(`no grade for the score ${score}`);
    return band.grade;
  }));
  return { id: matrix.id, title: '5 × 5, published bands', gradeWords: PLAIN_WORDS, levels: matrix.likelihood, cells, scores };
}

function fromTable(table: TableMatrix): GradeMatrix {
  return { id: table.id, title: table.title, gradeWords: table.gradeWords, levels: table.levels, cells: table.cells, scores: gradeScores(table.cells) };
}

function fromOwn(own: OwnMatrix): GradeMatrix {
  const levels = own.from.map((from, index) => ({
    level: index + 1,
    word: own.words[index] ?? `level ${index + 1}`,
    from,
    to: own.from[index + 1] ?? null,
    onceIn: own.from[index + 1] === undefined ? `${from} a season or oftener` : `${from} to ${own.from[index + 1]} a season`,
  }));
  return { id: 'own', title: own.title, gradeWords: PLAIN_WORDS, levels, cells: own.cells, scores: gradeScores(own.cells) };
}

function gradeScores(cells: readonly (readonly Grade[])[]): readonly (readonly number[])[] {
  return cells.map((row) => row.map((grade) => GRADES.indexOf(grade) + 1));
}
