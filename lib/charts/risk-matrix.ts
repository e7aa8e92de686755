import type { SeverityClass } from '@/lib/content/model';
import type { Grade, GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { severityWord } from '@/lib/wording/severity';
import { circle, gradeShape, path, rect, text, textLines } from './marks';
import { type Column, placeRisks, type Spot, type Wish } from './matrix-placement';
import { isBetter, type MatrixPosition, positionPlanned, positionToday, shareOfRow } from './matrix-positions';
import type { Taken } from './placement';
import { LINE_HEIGHT, type Mark, type Scene, WIDE } from './scene';
import { wrap } from './text-width';
import { tipPath } from './tip';

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
    marks: [...cells(grid), ...rowWords(grid), ...columnWords(grid), ...placed.flatMap(way), ...gradeMarks(grid), ...placed.flatMap(after), ...placed.flatMap(today)],
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

interface Cell { readonly grade: Grade | 'none'; readonly x: number; readonly y: number }

function cellsOf(grid: Grid): readonly Cell[] {
  return grid.matrix.cells.flatMap((row, index) => CLASSES.map((severity) => {
    const cell = row[severity - 1] ?? 'not applicable';
    return { grade: cell === 'not applicable' ? 'none' : cell, x: left(grid, severity), y: top(grid, index + 1) };
  }));
}

function cells(grid: Grid): readonly Mark[] {
  return cellsOf(grid).map(({ grade, x, y }) => {
    // the darkest cells have an edge of their own, which would close the gaps
    const inset = grade === 'extreme' ? 1.75 : 1;
    return rect(`cell-${grade}`, x + inset, y + inset, grid.columnWidth - 2 * inset, grid.rowHeight - 2 * inset);
  });
}

/** Over the ways, so that none of them cuts a mark. */
function gradeMarks(grid: Grid): readonly Mark[] {
  return cellsOf(grid).map(({ grade, x, y }) => gradeShape(grade, x + 5, y + 5, MARK, 'cell'));
}

function rowWords(grid: Grid): readonly Mark[] {
  return grid.matrix.levels.flatMap((band) => {
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

interface Placed extends Spot { readonly risk: RiskResult }

/** Worst grade first, so that what must be seen gets its place; then by rank. */
function place({ matrix, risks }: Result, grid: Grid): { readonly placed: readonly Placed[]; readonly listed: readonly RiskResult[] } {
  const order = risks.filter((risk) => positionToday(matrix, risk) !== null).sort((a, b) => HEIGHT[b.grade] - HEIGHT[a.grade] || a.rank - b.rank);
  const spots = placeRisks(order.flatMap((risk) => wish(matrix, risk, grid) ?? []), gradeBoxes(grid), { disc: DISC, ring: RING });
  const placed = order.flatMap((risk) => spots.filter((spot) => spot.id === risk.id).map((spot) => ({ ...spot, risk })));
  return { placed, listed: order.filter((risk) => !placed.some((spot) => spot.risk === risk)) };
}

function wish(matrix: ScoreResult['matrix'], risk: RiskResult, grid: Grid): Wish | null {
  const now = positionToday(matrix, risk);
  if (now === null) return null;
  const planned = positionPlanned(matrix, risk);
  const y = inside(yOf(grid, now), grid);
  const after = planned !== null && isBetter(planned, now) ? { y: inside(yOf(grid, planned), grid), column: column(grid, planned.severity) } : null;
  const visible = after !== null && (planned?.severity !== now.severity || Math.abs(after.y - y) > DISC + RING + 10);
  return { id: risk.id, y, column: column(grid, now.severity), after: visible ? after : null };
}

function column(grid: Grid, severity: SeverityClass): Column {
  return { middle: left(grid, severity) + grid.columnWidth / 2, half: grid.columnWidth / 2 };
}

function gradeBoxes(grid: Grid): Taken['boxes'] {
  return grid.matrix.levels.flatMap((band) => CLASSES.map((severity) => ({ x: left(grid, severity) + 5, y: top(grid, band.level) + 5, width: MARK, height: MARK })));
}

/** A mark at the very edge of the matrix stays whole; nowhere else is a frequency moved. */
function inside(y: number, grid: Grid): number {
  return Math.min(grid.bottom - DISC - 2, Math.max(TOP + DISC + 2, y));
}

/** From the edge of the disc to the edge of the ring, bent where straight would run under another disc. */
function way(spot: Placed): readonly Mark[] {
  if (spot.after === null) return [];
  const { bend } = spot.after;
  const [start, end] = [towards(spot, bend, DISC), towards(spot.after, bend, RING + 1)];
  const d = `M${start.x} ${start.y}Q${fixed(bend.x)} ${fixed(bend.y)} ${end.x} ${end.y}`;
  return [path('path-gap', d), path('path', d), path('ink', tipPath({ x1: bend.x, y1: bend.y, x2: end.x, y2: end.y }))];
}

function towards(from: { readonly x: number; readonly y: number }, to: { readonly x: number; readonly y: number }, distance: number): { readonly x: number; readonly y: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: fixed(from.x + ((to.x - from.x) / length) * distance), y: fixed(from.y + ((to.y - from.y) / length) * distance) };
}

function fixed(value: number): number { return Math.round(value * 10) / 10; }

function after(spot: Placed): readonly Mark[] {
  return spot.after === null ? [] : [circle('ring', spot.after.x, spot.after.y, RING)];
}

function today(spot: Placed): readonly Mark[] {
  return [circle('disc', spot.x, spot.y, DISC), text(spot.x, spot.y + 4.8, String(spot.risk.rank), 'on-ink', { anchor: 'middle', strong: true })];
}

function capital(words: string): string { return words.charAt(0).toUpperCase() + words.slice(1); }
