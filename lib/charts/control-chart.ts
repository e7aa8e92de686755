import { scaleBand, scaleLinear } from 'd3-scale';
import { line as linePath, area as areaPath, curveStepAfter } from 'd3-shape';
import { circle, line, path, text } from './marks';
import { type ChartWidth, type Mark, type Scene, WIDE } from './scene';

/** One period: what was seen of a unit of exposure, and how far chance alone reaches there. Both null without exposure. */
export interface ControlDot {
  readonly label: string;
  readonly value: number | null;
  readonly high: number | null;
  readonly isAbove: boolean;
}

const LEFT = 34;
const TOP = 42;
const FOOT = 26;
const LABELS = { wide: 8, narrow: 4 };
/** Least height of the axis, so that a record without events is not drawn as a flat line on a huge scale. */
const LEAST_TOP = 5;

/**
 * Events per unit of exposure, period by period: sand as far as chance alone reaches (u-chart), a dashed line at the
 * mean of all, ember where a period lies above. A period without exposure leaves a gap: it has no rate.
 * @param dots in order of time, at least one
 * @param centre mean of all periods
 * @param words heading and finding
 */
export function controlChartScene(dots: readonly ControlDot[], centre: number, words: { readonly heading: string; readonly finding: string }, width: ChartWidth): Scene {
  const height = width === WIDE ? 240 : 220;
  const x = scaleBand<number>().domain(dots.map((_, index) => index)).range([LEFT, width - 4]);
  const most = Math.max(LEAST_TOP, ...dots.flatMap(({ value, high }) => [value ?? 0, high ?? 0]));
  const y = scaleLinear().domain([0, most]).nice(4).range([height - FOOT, TOP]);
  const middle = (index: number): number => (x(index) ?? LEFT) + x.bandwidth() / 2;
  return {
    width,
    height,
    title: words.finding,
    marks: [
      text(0, 14, words.heading, 'ink-2'),
      ...sand(dots, x, y),
      ...y.ticks(4).flatMap((tick) => [line('grid', LEFT, y(tick), width - 4, y(tick)), text(LEFT - 6, y(tick) + 4, String(tick), 'ink-2', { anchor: 'end' })]),
      line('axis', LEFT, y(0), width - 4, y(0)),
      line('limit', LEFT, y(centre), width - 4, y(centre)),
      ...curve(dots, middle, y),
      ...dots.flatMap(({ value, isAbove }, index) => (value === null ? [] : [circle(isAbove ? 'ember' : 'ink', middle(index), y(value), isAbove ? 6 : 4)])),
      ...monthLabels(dots, middle, y(0), width),
      text(width - 6, TOP - 8, 'sand: chance alone reaches this far', 'ink-2', { anchor: 'end', halo: true }),
    ],
  };
}

type Band = ReturnType<typeof scaleBand<number>>;
type Height = (value: number) => number;

/** Steps, because each period has its own reach: few charges, wide sand. */
function sand(dots: readonly ControlDot[], x: Band, y: Height): readonly Mark[] {
  const corners = dots.flatMap(({ high }, index): { readonly at: number; readonly high: number | null }[] => [{ at: x(index) ?? 0, high }, { at: (x(index) ?? 0) + x.bandwidth(), high }]);
  const shape = areaPath<(typeof corners)[number]>().defined(({ high }) => high !== null).x(({ at }) => at).y0(y(0)).y1(({ high }) => y(high ?? 0)).curve(curveStepAfter).digits(2)(corners);
  return shape === null ? [] : [path('grain', shape)];
}

function curve(dots: readonly ControlDot[], middle: (index: number) => number, y: Height): readonly Mark[] {
  const shape = linePath<ControlDot>().defined(({ value }) => value !== null).x((_, index) => middle(index)).y(({ value }) => y(value ?? 0)).digits(2)([...dots]);
  return shape === null ? [] : [path('curve', shape)];
}

/** As many as fit beside one another. */
function monthLabels(dots: readonly ControlDot[], middle: (index: number) => number, foot: number, width: ChartWidth): readonly Mark[] {
  const every = Math.max(1, Math.ceil(dots.length / (width === WIDE ? LABELS.wide : LABELS.narrow)));
  return dots.flatMap(({ label }, index) => (index % every === 0 ? [text(middle(index), foot + 18, label, 'ink-2', { anchor: 'middle' })] : []));
}
