import { scaleLog } from 'd3-scale';
import type { DoubtResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';
import { line, rect, text, textLines } from './marks';
import { type ChartWidth, LINE_HEIGHT, type Mark, type Scene, WIDE } from './scene';
import { wrap } from './text-width';

/** Bars shown; the rest changes little and stands in the table. */
const TORNADO_BARS = 10;
/** Ends of the scale, as shares of today's harm: an end of zero cannot stand on a scale of factors. */
const LEAST = 0.01;
const MOST = 1000;
const HEAD = 40;
const BAR = 18;

/**
 * What would most reduce doubt: total harm with one thing at its low and at its high end, everything else as
 * today, as a multiple of today's harm. Widest first, as the engine gives them.
 * @param totalHarm today's, harm points a season; 0 draws nothing
 */
export function tornadoScene(doubts: readonly DoubtResult[], totalHarm: number, width: ChartWidth): Scene {
  const shown = totalHarm > 0 ? doubts.slice(0, TORNADO_BARS) : [];
  const bars = shown.map((doubt) => ({ doubt, low: onScale(doubt.harmLow / totalHarm), high: onScale(doubt.harmHigh / totalHarm) }));
  const from = width === WIDE ? 330 : 20;
  const x = scaleLog().domain([Math.min(0.5, ...bars.map((bar) => bar.low)), Math.max(2, ...bars.map((bar) => bar.high))]).range([from, width - 30]);
  const rows = rowsOf(bars, width);
  const height = rows.reduce((sum, row) => sum + row.height, HEAD) + 4;
  return { width, height, title: finding(bars), marks: [...axis(x), ...rows.flatMap((row) => rowMarks(row, x, width))] };
}

function onScale(share: number): number { return Math.min(MOST, Math.max(LEAST, share)); }

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

function rowMarks({ bar, y, height, lines }: Row, x: Scale, width: ChartWidth): readonly Mark[] {
  const wide = width === WIDE;
  const first = y + 14;
  const top = wide ? y + (height - 8 - BAR) / 2 : y + (lines.length + 1) * LINE_HEIGHT + 4;
  const from = x(bar.low);
  return [
    ...stepsOf(x).filter(([value]) => value !== 1).map(([value]) => line('grid', x(value), wide ? y : top - 3, x(value), wide ? y + height : top + BAR + 3)),
    ...(wide ? [line('grid', 0, y + height - 3, width, y + height - 3)] : []),
    ...textLines(0, first, lines, 'ink', { strong: bar.doubt.canBeChecked }),
    text(0, first + lines.length * LINE_HEIGHT, wrap(bar.doubt.between, wide ? 304 : width - 6, 1)[0] ?? '', 'ink-2'),
    rect('grain-edge', from, top, Math.max(2, x(bar.high) - from), BAR),
    // on a phone the words stand over the bars, so the lines of the scale stay beside the bars
    line('curve', x(1), wide ? y : top - 3, x(1), wide ? y + height : top + BAR + 3),
  ];
}

/** Least distance between two words of the scale, px. */
const APART = 64;

type Scale = ((value: number) => number) & { domain: () => number[] };

/** Steps of the scale that lie on it and do not crowd one another. */
function stepsOf(x: Scale): readonly (readonly [number, string])[] {
  const [low = 0.5, high = 2] = x.domain();
  const steps: readonly (readonly [number, string])[] = [[0.01, '1/100'], [0.1, '1/10'], [0.5, 'half'], [1, 'today'], [2, 'twice'], [10, '10 times'], [100, '100 times']];
  const isLong = high / low > 60;
  const shown = steps.filter(([value]) => value >= low * 0.999 && value <= high * 1.001 && !(isLong && (value === 0.5 || value === 2)));
  return shown.filter(([value]) => value === 1 || (Math.abs(x(value) - x(1)) > APART && (Math.abs(Math.log10(value)) < 2 || Math.abs(x(value) - x(value > 1 ? 10 : 0.1)) > APART)));
}

function axis(x: Scale): readonly Mark[] {
  return stepsOf(x).map(([value, word]) => text(x(value), 18, word, value === 1 ? 'ink' : 'ink-2', { anchor: 'middle', strong: value === 1 }));
}
