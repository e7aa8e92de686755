import { scaleLog } from 'd3-scale';
import type { DoubtResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';
import { line, rect, text, textLines } from './marks';
import { type ChartWidth, LINE_HEIGHT, type Mark, type Scene, WIDE } from './scene';
import { wrap } from './text-width';

/** Bars shown; the rest changes little and stands in the table. */
export const TORNADO_BARS = 10;
/** Least share of today's harm on the scale: an end of zero cannot stand on a scale of factors. */
const LEAST = 0.01;
const HEAD = 40;
const BAR = 18;

/**
 * What would most reduce doubt: total harm with one thing at its low and at its high end, everything else as
 * today, as a multiple of today's harm. Widest first, as the engine gives them.
 * @param totalHarm today's, harm points a season; 0 draws nothing
 */
export function tornadoScene(doubts: readonly DoubtResult[], totalHarm: number, width: ChartWidth): Scene {
  const shown = totalHarm > 0 ? doubts.slice(0, TORNADO_BARS) : [];
  const bars = shown.map((doubt) => ({ doubt, low: Math.max(LEAST, doubt.harmLow / totalHarm), high: Math.max(LEAST, doubt.harmHigh / totalHarm) }));
  const from = width === WIDE ? 330 : 6;
  const x = scaleLog().domain([Math.min(0.5, ...bars.map((bar) => bar.low)), Math.max(2, ...bars.map((bar) => bar.high))]).range([from, width - 24]);
  const rows = rowsOf(bars, width);
  const height = rows.reduce((sum, row) => sum + row.height, HEAD) + 4;
  return { width, height, title: finding(bars), marks: [...axis(x, height), ...rows.flatMap((row) => rowMarks(row, x, width)), line('curve', x(1), HEAD - 8, x(1), height)] };
}

interface Bar { readonly doubt: DoubtResult; readonly low: number; readonly high: number }
interface Row { readonly bar: Bar; readonly y: number; readonly height: number; readonly lines: readonly string[] }

function finding(bars: readonly Bar[]): string {
  const widest = bars[0];
  if (widest === undefined) return 'Nothing that can be varied changes the harm.';
  return `What would most reduce doubt: ${widest.doubt.title}, ${widest.doubt.between}, moves all harm between ${rounded(widest.low)} and ${rounded(widest.high)} times today’s.`;
}

function rowsOf(bars: readonly Bar[], width: ChartWidth): readonly Row[] {
  const room = width === WIDE ? 304 : width - 6;
  let y = HEAD;
  return bars.map((bar) => {
    const lines = wrap(bar.doubt.title, room, 2, bar.doubt.canBeChecked);
    const height = (width === WIDE ? Math.max(lines.length + 1, 2) * LINE_HEIGHT : (lines.length + 1) * LINE_HEIGHT + BAR + 4) + 12;
    const row = { bar, y, height, lines };
    y += height;
    return row;
  });
}

function rowMarks({ bar, y, height, lines }: Row, x: (value: number) => number, width: ChartWidth): readonly Mark[] {
  const wide = width === WIDE;
  const first = y + 14;
  const top = wide ? y + (height - 8 - BAR) / 2 : y + (lines.length + 1) * LINE_HEIGHT + 4;
  const from = x(bar.low);
  return [
    ...(wide ? [line('grid', 0, y + height - 3, width, y + height - 3)] : []),
    ...textLines(0, first, lines, 'ink', { strong: bar.doubt.canBeChecked }),
    text(0, first + lines.length * LINE_HEIGHT, wrap(bar.doubt.between, wide ? 304 : width - 6, 1)[0] ?? '', 'ink-2'),
    rect('grain-edge', from, top, Math.max(2, x(bar.high) - from), BAR),
  ];
}

function axis(x: ((value: number) => number) & { domain: () => number[] }, height: number): readonly Mark[] {
  const [low = 0.5, high = 2] = x.domain();
  const steps: readonly (readonly [number, string])[] = [[0.01, '1/100'], [0.1, '1/10'], [0.5, 'half'], [1, 'today'], [2, 'twice'], [10, '10 times'], [100, '100 times']];
  const inside = steps.filter(([value]) => value >= low * 0.999 && value <= high * 1.001);
  const wide = high / low;
  // half and twice crowd today on a long scale
  const shown = inside.filter(([value]) => wide < 60 || (value !== 0.5 && value !== 2));
  return shown.flatMap(([value, word]) => [line(value === 1 ? 'axis' : 'grid', x(value), HEAD - 8, x(value), height), text(x(value), 18, word, value === 1 ? 'ink' : 'ink-2', { anchor: 'middle', strong: value === 1 })]);
}
