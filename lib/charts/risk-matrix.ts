import type { SeverityClass } from '@/lib/content/model';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { severityWord } from '@/lib/wording/severity';
import { circle, line, rect, text, textLines } from './marks';
import { type MatrixPosition, positionPlanned, positionToday, shareOfRow } from './matrix-positions';
import { discIsFree, outward, pathIsFree, type Segment, type Taken } from './placement';
import { type CellRole, LINE_HEIGHT, type Mark, type Scene, WIDE } from './scene';
import { wrap } from './text-width';

type Result = Pick<ScoreResult, 'matrix' | 'risks'>;

/** The drawing, and the risks that found no place in it and have to be listed beside it. */
export interface MatrixScene extends Scene { readonly listed: readonly RiskResult[] }

const CLASSES: readonly SeverityClass[] = [1, 2, 3, 4, 5];
const LEFT = 136;
const TOP = 2;
const DISC = 11;
const RING = 5.5;
const MARK = 15;
const HEIGHT: Readonly<Record<GradeOrNone, number>> = { 'not applicable': 0, low: 1, moderate: 2, high: 3, extreme: 4 };

/**
 * The school's matrix with each risk's way from today to the day the open actions are done. A disc's height
 * in its row is its true frequency; beside one another they are moved apart, and a risk that still finds
 * no place goes on the list. Wide only: on a phone the cells would be smaller than the marks.
 */
export function riskMatrixScene(result: Result): MatrixScene {
  const grid = gridOf(result.matrix);
  const { placed, listed } = place(result, grid);
  return {
    width: WIDE,
    height: grid.bottom + 46,
    title: finding(placed.length, listed.length, placed.filter((one) => one.after !== null).length),
    marks: [...cells(result.matrix, grid), ...rowWords(result.matrix, grid), ...columnWords(grid), ...placed.flatMap(way), ...placed.map(after).flat(), ...placed.flatMap(today)],
    listed,
  };
}

function finding(drawn: number, listed: number, moving: number): string {
  const rest = listed === 0 ? '' : ` ${listed} more are listed below.`;
  const moves = moving === 0 ? 'No open action moves any of them.' : `${moving} move to the open ring at the end of their arrow once the open actions are done.`;
  return `Risk matrix with ${drawn} risks, each a filled number where it stands today. ${moves}${rest} The table gives the same.`;
}

interface Grid { readonly rows: number; readonly rowHeight: number; readonly columnWidth: number; readonly bottom: number; readonly matrix: ScoreResult['matrix'] }

function gridOf(matrix: ScoreResult['matrix']): Grid {
  const rows = matrix.levels.length;
  const rowHeight = rows <= 3 ? 116 : 78;
  return { rows, rowHeight, columnWidth: (WIDE - LEFT) / CLASSES.length, bottom: TOP + rows * rowHeight, matrix };
}

const left = (grid: Grid, severity: SeverityClass): number => LEFT + (severity - 1) * grid.columnWidth;
const top = (grid: Grid, level: number): number => TOP + (grid.rows - level) * grid.rowHeight;

function yOf(grid: Grid, position: MatrixPosition): number {
  return top(grid, position.level) + grid.rowHeight * (1 - shareOfRow(grid.matrix, position.level, position.frequency));
}

function cells(matrix: ScoreResult['matrix'], grid: Grid): readonly Mark[] {
  return matrix.cells.flatMap((row, index) => CLASSES.flatMap((severity): readonly Mark[] => {
    const cell = row[severity - 1] ?? 'not applicable';
    const grade = cell === 'not applicable' ? 'none' : cell;
    const [x, y] = [left(grid, severity), top(grid, index + 1)];
    const role: CellRole = `cell-${grade}`;
    return [rect(role, x + 1, y + 1, grid.columnWidth - 2, grid.rowHeight - 2), { kind: 'grade', grade, x: x + 5, y: y + 5, size: MARK, on: 'cell' }];
  }));
}

function rowWords(matrix: ScoreResult['matrix'], grid: Grid): readonly Mark[] {
  return matrix.levels.flatMap((band) => {
    const lines = wrap(band.onceIn, LEFT - 12, 2);
    const first = top(grid, band.level) + grid.rowHeight / 2 - (lines.length * LINE_HEIGHT) / 2 + 4;
    return [text(LEFT - 8, first, capital(band.word), 'ink', { anchor: 'end', strong: true }), ...textLines(LEFT - 8, first + LINE_HEIGHT, lines, 'ink-2', { anchor: 'end' })];
  });
}

function columnWords(grid: Grid): readonly Mark[] {
  const middle = (severity: SeverityClass): number => left(grid, severity) + grid.columnWidth / 2;
  return [
    ...CLASSES.map((severity) => text(middle(severity), grid.bottom + 19, severityWord(severity), 'ink', { anchor: 'middle', strong: severity === 5 })),
    text(0, grid.bottom + 40, 'how often, upward', 'ink-2'),
    text(WIDE, grid.bottom + 40, 'how bad it would be', 'ink-2', { anchor: 'end' }),
  ];
}

interface Placed { readonly risk: RiskResult; readonly x: number; readonly y: number; readonly after: { readonly x: number; readonly y: number } | null }

/** Worst grade first, so that what must be seen gets its place; then by rank. */
function place({ matrix, risks }: Result, grid: Grid): { readonly placed: readonly Placed[]; readonly listed: readonly RiskResult[] } {
  const taken: Taken = { discs: [], boxes: gradeBoxes(grid), paths: [] };
  const placed: Placed[] = [];
  const listed: RiskResult[] = [];
  const order = [...risks].sort((a, b) => HEIGHT[b.grade] - HEIGHT[a.grade] || a.rank - b.rank);
  for (const risk of order) {
    const now = positionToday(matrix, risk);
    if (now === null) continue;
    const spot = freeSpot(risk, now, positionPlanned(matrix, risk), grid, taken);
    if (spot === null) { listed.push(risk); continue; }
    placed.push(spot);
    take(spot, taken);
  }
  return { placed, listed };
}

function gradeBoxes(grid: Grid): Taken['boxes'] {
  return grid.matrix.levels.flatMap((band) => CLASSES.map((severity) => ({ x: left(grid, severity) + 5, y: top(grid, band.level) + 5, width: MARK, height: MARK })));
}

function freeSpot(risk: RiskResult, now: MatrixPosition, planned: MatrixPosition | null, grid: Grid, taken: Taken): Placed | null {
  const half = grid.columnWidth / 2;
  const moves = planned !== null && (planned.severity !== now.severity || Math.abs(yOf(grid, planned) - yOf(grid, now)) > DISC + RING + 4);
  const y = inside(yOf(grid, now), grid);
  for (const offset of outward(half - DISC - 2, 4)) {
    const x = left(grid, now.severity) + half + offset;
    const after = moves ? { x: left(grid, planned.severity) + half + offset, y: inside(yOf(grid, planned), grid) } : null;
    const spot = { risk, x, y, after };
    if (discIsFree(x, y, DISC, taken) && afterIsFree(spot, taken)) return spot;
  }
  return null;
}

function afterIsFree(spot: Placed, taken: Taken): boolean {
  if (spot.after === null) return true;
  const end = { discs: taken.discs, boxes: [], paths: [] };
  return discIsFree(spot.after.x, spot.after.y, RING + 1, end) && pathIsFree(segment(spot, spot.after), taken);
}

function take(spot: Placed, taken: Taken): void {
  taken.discs.push({ x: spot.x, y: spot.y, r: DISC });
  if (spot.after === null) return;
  taken.discs.push({ ...spot.after, r: RING + 1 });
  taken.paths.push(segment(spot, spot.after));
}

/** A mark at the very edge of the matrix stays whole; nowhere else is a frequency moved. */
function inside(y: number, grid: Grid): number {
  return Math.min(grid.bottom - DISC - 2, Math.max(TOP + DISC + 2, y));
}

function segment(from: { readonly x: number; readonly y: number }, to: { readonly x: number; readonly y: number }): Segment {
  return { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
}

function way(spot: Placed): readonly Mark[] {
  if (spot.after === null) return [];
  const length = Math.hypot(spot.after.x - spot.x, spot.after.y - spot.y);
  const at = (distance: number): readonly [number, number] => [spot.x + ((spot.after?.x ?? spot.x) - spot.x) * (distance / length), spot.y + ((spot.after?.y ?? spot.y) - spot.y) * (distance / length)];
  const [[x1, y1], [x2, y2]] = [at(DISC), at(length - RING - 1)];
  return [line('path-gap', x1, y1, x2, y2), line('path', x1, y1, x2, y2, { tip: true })];
}

function after(spot: Placed): readonly Mark[] {
  return spot.after === null ? [] : [circle('ring', spot.after.x, spot.after.y, RING)];
}

function today(spot: Placed): readonly Mark[] {
  return [circle('disc', spot.x, spot.y, DISC), text(spot.x, spot.y + 4.8, String(spot.risk.rank), 'on-ink', { anchor: 'middle', strong: true })];
}

function capital(words: string): string { return words.charAt(0).toUpperCase() + words.slice(1); }
