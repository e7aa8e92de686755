import { scaleLinear, scaleTime } from 'd3-scale';
import { DAY_MS } from '@/lib/units/time';
import { circle, line, text } from './marks';
import { type ChartWidth, type Mark, type Scene, WIDE } from './scene';

/** Cell spread of one check. */
export interface SpreadDot { readonly at: Date; readonly spreadV: number }
/** A limit it is held to, by the content or the school, V. */
export interface SpreadLimit { readonly volts: number; readonly words: string }

const LEFT = 40;
const TOP = 34;
const FOOT = 30;
const LABEL = { wide: 124, narrow: 4 };
/** Up to here the days are written, beyond it the months. */
const SHORT_SPAN_DAYS = 120;
const MONTH = new Intl.DateTimeFormat('en-GB', { month: 'short', year: '2-digit', timeZone: 'UTC' });
const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/**
 * The spread of a pack's cells over its checks, with the limits it is held to. The last dot presses when it is at or over
 * the highest limit. Nothing is drawn beyond the last check: a spread is no forecast.
 * @param dots oldest first, at least one
 */
export function spreadScene(dots: readonly SpreadDot[], limits: readonly SpreadLimit[], width: ChartWidth): Scene {
  const height = width === WIDE ? 250 : 240;
  const right = width - (width === WIDE ? LABEL.wide : LABEL.narrow);
  const times = dots.map(({ at }) => at.getTime());
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const x = scaleTime().domain([new Date(first - DAY_MS), new Date(Math.max(last, first + 28 * DAY_MS))]).range([LEFT, right]);
  const tickWords = last - first > SHORT_SPAN_DAYS * DAY_MS ? MONTH : DAY;
  const most = Math.max(...dots.map(({ spreadV }) => spreadV * 1000), ...limits.map(({ volts }) => volts * 1000));
  const y = scaleLinear().domain([0, most]).nice(4).range([height - FOOT, TOP]);
  return {
    width,
    height,
    title: spreadFinding(dots),
    marks: [
      text(0, 14, 'Difference of highest and lowest cell, mV', 'ink-2'),
      ...y.ticks(4).flatMap((tick) => [line('grid', LEFT, y(tick), right, y(tick)), text(LEFT - 6, y(tick) + 4, String(tick), 'ink-2', { anchor: 'end' })]),
      ...limits.flatMap((limit) => limitMarks(limit, { y, right, width })),
      line('axis', LEFT, y(0), right, y(0)),
      ...x.ticks(4).flatMap((tick) => [line('axis', x(tick), y(0), x(tick), y(0) + 5), text(x(tick), y(0) + 20, tickWords.format(tick), 'ink-2', { anchor: x(tick) > right - 24 ? 'end' : 'middle' })]),
      ...dots.map(({ at, spreadV }, index) => circle(index === dots.length - 1 && isOver(spreadV, limits) ? 'ember' : 'ink', x(at), y(spreadV * 1000), index === dots.length - 1 ? 6 : 4)),
    ],
  };
}

/** What the picture says, for those who cannot see it. */
function spreadFinding(dots: readonly SpreadDot[]): string {
  const last = dots.at(-1);
  const first = dots[0];
  if (last === undefined || first === undefined) return 'No check has measured the cells.';
  const now = `${Math.round(last.spreadV * 1000)} mV at the last check`;
  return dots.length === 1 ? `One check: ${now}.` : `${dots.length} checks: ${Math.round(first.spreadV * 1000)} mV at the first, ${now}.`;
}

function isOver(spreadV: number, limits: readonly SpreadLimit[]): boolean {
  return limits.length > 0 && spreadV >= Math.max(...limits.map(({ volts }) => volts));
}

function limitMarks({ volts, words }: SpreadLimit, { y, right, width }: { readonly y: (value: number) => number; readonly right: number; readonly width: ChartWidth }): readonly Mark[] {
  const at = y(volts * 1000);
  const label = width === WIDE ? text(right + 8, at + 4, words, 'ink') : text(LEFT + 4, at - 5, words, 'ink', { halo: true });
  return [line('limit', LEFT, at, right, at), label];
}
