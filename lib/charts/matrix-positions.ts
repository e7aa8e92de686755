import type { BranchResult, Grade, GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import type { SeverityClass } from '@/lib/content/model';

type Matrix = ScoreResult['matrix'];

/** Where a risk stands: the frequency and class of the end that decides its grade. */
export interface MatrixPosition { readonly frequency: number; readonly level: number; readonly severity: SeverityClass; readonly grade: GradeOrNone }

const HEIGHT: Readonly<Record<Grade, number>> = { low: 1, moderate: 2, high: 3, extreme: 4 };

/** Level of a frequency: the last band that begins at or below it. */
function levelAt(matrix: Matrix, frequency: number): number {
  return matrix.levels.reduce((level, band) => (frequency >= band.from ? band.level : level), 1);
}

/** Grade of a cell; "not applicable" where the matrix has none, which a checked matrix never does. */
function gradeAt(matrix: Matrix, level: number, severity: SeverityClass): GradeOrNone {
  return matrix.cells[level - 1]?.[severity - 1] ?? 'not applicable';
}

/** Today, by the end that the engine names. Null when the risk does not arise here. */
export function positionToday(matrix: Matrix, risk: RiskResult): MatrixPosition | null {
  const branch = risk.branches.find((one) => one.id === risk.decidedBy);
  if (risk.grade === 'not applicable' || branch === undefined || branch.frequency <= 0) return null;
  return { frequency: branch.frequency, level: branch.level, severity: branch.severity, grade: risk.grade };
}

/**
 * Once the open actions are done, by the end that is then the worst: by grade, then by level times class,
 * then by frequency, as the engine decides it today.
 */
export function positionPlanned(matrix: Matrix, risk: RiskResult): MatrixPosition | null {
  const ends = risk.branches.filter((branch) => branch.plannedFrequency > 0).map((branch) => plannedEnd(matrix, branch));
  return ends.reduce<MatrixPosition | null>((worst, end) => (worst === null || isWorse(end, worst) ? end : worst), null);
}

function plannedEnd(matrix: Matrix, branch: BranchResult): MatrixPosition {
  const level = levelAt(matrix, branch.plannedFrequency);
  return { frequency: branch.plannedFrequency, level, severity: branch.plannedSeverity, grade: gradeAt(matrix, level, branch.plannedSeverity) };
}

function isWorse(one: MatrixPosition, other: MatrixPosition): boolean {
  const height = (grade: GradeOrNone): number => (grade === 'not applicable' ? 0 : HEIGHT[grade]);
  if (height(one.grade) !== height(other.grade)) return height(one.grade) > height(other.grade);
  const score = (position: MatrixPosition): number => position.level * position.severity;
  return score(one) === score(other) ? one.frequency > other.frequency : score(one) > score(other);
}

/**
 * Whether a risk gets better on the matrix. Done actions may only make another end the worst one, as bad as
 * the first: that is no way to draw.
 */
export function isBetter(planned: MatrixPosition, today: MatrixPosition): boolean {
  if (planned.severity === today.severity) return planned.frequency < today.frequency;
  return isWorse(today, planned) && planned.level * planned.severity < today.level * today.severity;
}

/**
 * How far up its row a frequency lies, 0 at the lower bound of the level and 1 at the upper, on a log scale.
 * The first level has no lower bound and the last no upper one: there a decade is drawn, and what lies
 * beyond stands at its end.
 */
export function shareOfRow(matrix: Matrix, level: number, frequency: number): number {
  const band = matrix.levels[level - 1];
  if (band === undefined) throw new Error(`the matrix has no level ${level}`);
  const low = band.from > 0 ? band.from : (band.to ?? 1) / 10;
  const high = band.to ?? low * 10;
  if (!(high > low)) return 0.5;
  return Math.min(1, Math.max(0, Math.log(frequency / low) / Math.log(high / low)));
}
