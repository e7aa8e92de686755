import { scaleLinear } from 'd3-scale';
import { area, curveLinear, line as curve } from 'd3-shape';
import type { Content } from '@/lib/content/model';
import type { SmokeCase, SmokeLevel } from '@/lib/core/result';
import { perSecond, shareInAir } from '@/lib/core/smoke/well-mixed';
import type { AirChangesPerHour, Seconds } from '@/lib/units/quantity';
import { ppm } from '@/lib/wording/measures';
import { circle, line, path, text, textLines } from './marks';
import { type ChartWidth, type Mark, type Scene, WIDE } from './scene';

/** Published concentrations of hydrogen fluoride to draw against, ppm. */
export interface SmokeThresholds {
  /** immediately dangerous to life or health */
  readonly dangerous: number;
  /** AEGL-3 for half an hour: life at risk */
  readonly lifeAtRisk: number;
  /** AEGL-1: irritation begins */
  readonly irritation: number;
}

/**
 * The thresholds out of the content's published tables.
 * @throws when the tables have no half-hour values: a fault of the content
 */
export function smokeThresholds({ aegl, idlh }: Pick<Content, 'aegl' | 'idlh'>): SmokeThresholds {
  const half = aegl.durationsMin.indexOf(HALF_HOUR);
  const [irritation, lifeAtRisk] = [aegl.HF['1'][half], aegl.HF['3'][half]];
  if (irritation === undefined || lifeAtRisk === undefined) throw new Error('the content has no half-hour values for hydrogen fluoride');
  return { dangerous: idlh.HF, lifeAtRisk, irritation };
}

export interface SmokePoint { readonly seconds: number; readonly low: number; readonly mid: number; readonly high: number }

const HALF_HOUR = 30;
/** Points on the curve besides its bend; the curve is smooth, so many are not needed. */
const STEPS = 60;

/**
 * Hydrogen fluoride in the well-mixed room over time, ppm, at low, middle and high yields. Each level's
 * published peak stands at the end of the release, so C(t) = peak · share(t) / share(τ) (`shareInAir`).
 * @param span seconds from the first smoke that are drawn, above 0
 */
export function smokePoints(smoke: SmokeCase, span: number): readonly SmokePoint[] {
  const k = perSecond(smoke.airChanges as AirChangesPerHour);
  const release = smoke.releaseSeconds as Seconds;
  const atPeak = shareInAir(k, release, release);
  const times = [...Array.from({ length: STEPS + 1 }, (_, step) => (span * step) / STEPS), ...(release < span ? [release] : [])].sort((a, b) => a - b);
  return times.map((seconds) => {
    const share = shareInAir(k, release, seconds as Seconds) / atPeak;
    const at = (level: SmokeLevel): number => level.HF.peakPpm * share;
    return { seconds, low: at(smoke.levels.low), mid: at(smoke.levels.mid), high: at(smoke.levels.high) };
  });
}

/** Seconds to draw: ten minutes, or until the room is empty and a little more. */
export function smokeSpan(smoke: SmokeCase): number {
  return Math.max(600, Math.ceil((smoke.evacuationSeconds * 1.2) / 120) * 120, Math.ceil((smoke.releaseSeconds * 1.2) / 120) * 120);
}

/** The curve with its thresholds. What it tells is where to be at the first smoke, never how long one may stay. */
export function smokeScene(smoke: SmokeCase, thresholds: SmokeThresholds, width: ChartWidth): Scene {
  const plot = plotOf(smoke, thresholds, width);
  const points = smokePoints(smoke, smokeSpan(smoke));
  return {
    width,
    height: plot.height,
    title: finding(smoke, thresholds),
    marks: [...frame(plot), ...curves(plot, points), ...limits(plot, thresholds, points), ...times(plot, smoke), ...labels(plot, points)],
  };
}

function finding(smoke: SmokeCase, thresholds: SmokeThresholds): string {
  const { low, mid, high } = smoke.levels;
  const peak = `Smoke in the room on a well-mixed model: at most ${ppm(mid.HF.peakPpm)} of hydrogen fluoride on the middle estimate, ${ppm(low.HF.peakPpm)} to ${ppm(high.HF.peakPpm)} over the range.`;
  const reached = high.HF.peakPpm >= thresholds.dangerous ? `It can pass ${ppm(thresholds.dangerous)}, which is immediately dangerous.` : `Irritation begins at ${ppm(thresholds.irritation)}.`;
  return `${peak} ${reached} Near the pack it is more. Leave at the first smoke.`;
}

interface Plot {
  readonly width: ChartWidth;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (seconds: number) => number;
  readonly y: (ppm: number) => number;
  readonly yTicks: readonly number[];
  readonly minutes: number;
}

/** Room for the words of the thresholds at the right of the wide drawing. */
const LABELS = 170;

function plotOf(smoke: SmokeCase, thresholds: SmokeThresholds, width: ChartWidth): Plot {
  const wide = width === WIDE;
  const height = wide ? 340 : 320;
  const edges = { left: 40, right: width - (wide ? LABELS : 6), top: 44, bottom: height - 42 };
  const span = smokeSpan(smoke);
  const most = Math.max(smoke.levels.high.HF.peakPpm, thresholds.dangerous) * 1.08;
  const y = scaleLinear().domain([0, most]).nice(5).range([edges.bottom, edges.top]);
  const x = scaleLinear().domain([0, span]).range([edges.left, edges.right]);
  return { width, height, ...edges, x, y, yTicks: y.ticks(5), minutes: span / 60 };
}

function frame(plot: Plot): readonly Mark[] {
  const { left, right, bottom, x, y } = plot;
  const every = Math.max(1, Math.ceil(plot.minutes / (plot.width === WIDE ? 10 : 5)));
  const minutes = Array.from({ length: Math.floor(plot.minutes / every) + 1 }, (_, index) => index * every);
  return [
    text(0, 13, 'Hydrogen fluoride, ppm', 'ink-2'),
    ...plot.yTicks.flatMap((tick) => [line('grid', left, y(tick), right, y(tick)), text(left - 7, y(tick) + 4.5, String(tick), 'ink-2', { anchor: 'end' })]),
    line('axis', left, bottom, right, bottom),
    ...minutes.flatMap((minute) => [
      line('axis', x(minute * 60), bottom, x(minute * 60), bottom + 6),
      text(x(minute * 60), bottom + 21, String(minute), 'ink-2', { anchor: minute === plot.minutes && plot.width !== WIDE ? 'end' : 'middle' }),
    ]),
    text(right, plot.height - 3, 'minutes from the first smoke', 'ink-2', { anchor: 'end' }),
  ];
}

function curves(plot: Plot, points: readonly SmokePoint[]): readonly Mark[] {
  const x = (point: SmokePoint): number => plot.x(point.seconds);
  const band = area<SmokePoint>().x(x).y0((point) => plot.y(point.low)).y1((point) => plot.y(point.high)).curve(curveLinear)(points);
  const middle = curve<SmokePoint>().x(x).y((point) => plot.y(point.mid))(points);
  return [path('grain', band ?? ''), path('curve', middle ?? '')];
}

/** A threshold that the scale does not reach is not drawn. */
function limits(plot: Plot, thresholds: SmokeThresholds, points: readonly SmokePoint[]): readonly Mark[] {
  const rows = [
    { at: thresholds.irritation, role: 'lesser' as const, words: [`${ppm(thresholds.irritation)}: irritation begins;`, 'asthma may start here'], narrow: `${ppm(thresholds.irritation)}: irritation; asthma may start` },
    { at: thresholds.dangerous, role: 'limit' as const, words: [`${ppm(thresholds.dangerous)}: immediately`, 'dangerous (published)'], narrow: `${ppm(thresholds.dangerous)}: immediately dangerous` },
    { at: thresholds.lifeAtRisk, role: 'limit' as const, words: [`${ppm(thresholds.lifeAtRisk)}, half an hour:`, 'life at risk (published)'], narrow: `${ppm(thresholds.lifeAtRisk)}, half an hour: life at risk` },
  ].filter((row) => plot.y(row.at) >= plot.top);
  return rows.flatMap((row) => [line(row.role, plot.left, plot.y(row.at), plot.right, plot.y(row.at)), ...limitWords(plot, row, points)]);
}

interface Limit { readonly at: number; readonly role: 'limit' | 'lesser'; readonly words: readonly string[]; readonly narrow: string }

/** Beside the drawing where there is room, else on the line, under it when the middle estimate runs just above. */
function limitWords(plot: Plot, row: Limit, points: readonly SmokePoint[]): readonly Mark[] {
  const strong = row.role === 'limit';
  const y = plot.y(row.at);
  const crowded = points.some((point) => plot.x(point.seconds) > (plot.left + plot.right) / 2 && y - plot.y(point.mid) > -4 && y - plot.y(point.mid) < 42);
  if (plot.width !== WIDE) return [text(plot.right, crowded && row.role === 'limit' ? y + 16 : y - 6, row.narrow, 'ink', { anchor: 'end', halo: true, strong })];
  return textLines(plot.right + 8, row.role === 'lesser' ? y - 11 : y - 2, row.words, 'ink', { strong });
}

/** The moment that asks for a person is the first one. When the room is empty is a fact of the drill, in ink. */
function times(plot: Plot, smoke: SmokeCase): readonly Mark[] {
  const empty = plot.x(smoke.evacuationSeconds);
  const wide = plot.width === WIDE;
  const words = wide ? 'the last person is out' : 'last person out';
  const near = empty < plot.left + (wide ? 190 : 130);
  return [
    line('lesser', empty, plot.top - 4, empty, plot.bottom),
    text(near ? empty + 6 : empty - 6, plot.top + 8, words, 'ink-2', { halo: true, anchor: near ? 'start' : 'end' }),
    line('ember', plot.left, plot.top - 14, plot.left, plot.bottom),
    circle('ember', plot.left, plot.bottom, 6),
    text(plot.left + 8, plot.top - 10, 'leave here, at the first smoke', 'ember', { strong: true, halo: true }),
  ];
}

/** The middle is named on its curve where there is room, the band's edges on the wide drawing only. */
function labels(plot: Plot, points: readonly SmokePoint[]): readonly Mark[] {
  const at = points[Math.round(points.length * 0.62)];
  if (at === undefined) return [];
  const x = plot.x(at.seconds);
  const middle = text(x, plot.y(at.mid) - 7, 'middle estimate', 'ink', { anchor: 'middle', halo: true, strong: true });
  const gap = plot.y(at.mid) - plot.y(at.high);
  if (plot.width !== WIDE || gap < 56) return [middle];
  return [middle, text(x, plot.y(at.high) + 32, 'if the packs give off most', 'ink', { anchor: 'middle', halo: true })];
}
