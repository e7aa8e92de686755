import type { GradeOrNone, ScoreResult } from '@/lib/core/result';
import { gradeWord } from '@/lib/wording/grades';

/** The mark of each grade, as near to the drawn one as letters come. */
const MARKS: Readonly<Record<GradeOrNone, string>> = { low: '○', moderate: '◐', high: '▲', extreme: '⬢', 'not applicable': ' ' };

/** A grade with its mark and the word of the matrix in use. */
export function gradeText(grade: GradeOrNone, matrix: ScoreResult['matrix']): string {
  return `${MARKS[grade]} ${gradeWord(grade, grade === 'not applicable' ? undefined : matrix.gradeWords[grade])}`;
}
