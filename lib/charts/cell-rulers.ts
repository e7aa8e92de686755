import { scaleLinear } from 'd3-scale';
import { circle, line, path, rect, text } from './marks';
import { type ChartWidth, type Mark, type Scene, WIDE } from './scene';

/** What the rulers are drawn against, V a cell; null where this content does not judge such cells. */
export interface CellLimits {
  readonly low: number | null;
  readonly full: number | null;
  readonly storage: { readonly low: number; readonly high: number } | null;
}

const LEFT = 58;
const RIGHT = { wide: 78, narrow: 66 };
const TOP = 40;
const ROW = 38;
const FOOT = 26;
/** What the rulers show at least, V. */
const SHOWN = { from: 3, to: 4.3 };

/**
 * Every cell of one measurement on a ruler of its own, with the limits it is held to. A silent cell has no pointer and
 * says so.
 * @param volts in the order of the balance plug, null for a cell that reads nothing; at least one
 * @param pressing cells (from 1) that a sign speaks of
 */
export function cellScene(volts: readonly (number | null)[], limits: CellLimits, pressing: readonly number[], width: ChartWidth): Scene {
  const reading = volts.filter((cell) => cell !== null);
  const right = width - (width === WIDE ? RIGHT.wide : RIGHT.narrow);
  const x = scaleLinear().domain([Math.min(SHOWN.from, ...reading), Math.max(SHOWN.to, ...reading)]).range([LEFT, right]);
  const bottom = TOP + volts.length * ROW;
  return {
    width,
    height: bottom + FOOT,
    title: cellFinding(volts),
    marks: [
      ...limitMarks(limits, x, bottom),
      ...volts.flatMap((cell, at) => rulerMarks({ cell, at, x, width, isPressing: pressing.includes(at + 1) })),
      ...[3, 3.5, 4].map((tick) => text(x(tick), bottom + 16, tick.toFixed(1), 'ink-2', { anchor: 'middle' })),
    ],
  };
}

/** "4 cells, 3.72 to 3.73 V, 10 mV apart": what the picture says, for those who cannot see it. */
export function cellFinding(volts: readonly (number | null)[]): string {
  const reading = volts.filter((cell) => cell !== null);
  const silent = volts.length - reading.length;
  const silence = silent === 0 ? '' : ` ${silent === 1 ? 'One cell reads' : `${silent} cells read`} nothing.`;
  if (reading.length === 0) return `${volts.length} cells.${silence}`;
  const [low, high] = [Math.min(...reading), Math.max(...reading)];
  return `${volts.length === 1 ? 'One cell' : `${volts.length} cells`}, ${low.toFixed(2)} to ${high.toFixed(2)} V, ${Math.round((high - low) * 1000)} mV apart.${silence}`;
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

function limitMarks({ low, full, storage }: CellLimits, x: Scale, bottom: number): readonly Mark[] {
  const limit = (at: number | null, words: string, anchor: 'start' | 'middle' | 'end'): readonly Mark[] => (at === null ? [] : [line('limit', x(at), TOP - 16, x(at), bottom - 8), text(x(at), TOP - 22, words, 'ink-2', { anchor })]);
  const window = storage === null ? [] : [rect('grain-edge', x(storage.low), TOP - 16, x(storage.high) - x(storage.low), bottom - TOP + 8), text((x(storage.low) + x(storage.high)) / 2, TOP - 22, 'storage', 'ink-2', { anchor: 'middle' })];
  return [...window, ...limit(low, 'low', 'middle'), ...limit(full, 'full', 'middle')];
}

interface Ruler { readonly cell: number | null; readonly at: number; readonly x: Scale; readonly width: ChartWidth; readonly isPressing: boolean }

function rulerMarks({ cell, at, x, width, isPressing }: Ruler): readonly Mark[] {
  const y = TOP + at * ROW + ROW / 2;
  const [from, to] = x.range() as [number, number];
  const tone = isPressing ? 'ember' : 'ink';
  const value = cell === null ? 'nothing' : `${cell.toFixed(2)} V`;
  return [
    line('axis', from, y, to, y),
    ...x.ticks(13).map((tick) => line('tick', x(tick), y, x(tick), y - (Number.isInteger(tick * 2) ? 8 : 4))),
    text(0, y + 4, `Cell ${at + 1}`, tone, { strong: isPressing }),
    ...(cell === null ? [] : [isPressing ? circle('ember', x(cell), y - 9, 7) : path('ink', plumb(x(cell), y))]),
    text(width, y + 4, value, tone, { anchor: 'end', strong: true }),
  ];
}

/** The pointer of every ruler: a plumb that stands on the value. One that presses is a disc, so that it differs without colour too. */
function plumb(x: number, y: number): string {
  const at = Math.round(x * 100) / 100;
  return `M${at} ${y - 1}l-7 -12v-7h14v7z`;
}
