import { scaleLinear } from 'd3-scale';
import { area, curveStepAfter, line as curve } from 'd3-shape';
import type { BestSet } from '@/lib/core/result';
import { percent } from '@/lib/wording/numbers';
import { circle, line, path, text } from './marks';
import { type ChartWidth, type Mark, type Scene, WIDE } from './scene';

/** Half of the slider's pointer, so that slider and curve share their scale. */
const SIDE = 14;
const TOP = 30;
/** Width of "100 %" and a little more, px. */
const TICK_WORD = 48;
const BASE = 8;

/**
 * Share of the harm taken away by the best set for each effort, as steps, with the range of the draws as
 * sand. The ember mark is the effort chosen.
 * @param sets best sets, one per budget; in any order, at least one
 * @param budget effort points chosen
 */
export function effortScene(sets: readonly BestSet[], budget: number, width: ChartWidth): Scene {
  const height = width === WIDE ? 220 : 210;
  const steps = [...sets].sort((a, b) => a.budget - b.budget);
  const most = Math.max(1, steps.at(-1)?.budget ?? 1, budget);
  const x = scaleLinear().domain([0, most]).range([SIDE, width - SIDE]);
  const highest = Math.max(0.1, ...steps.map((set) => Math.max(set.cut, set.cutInterval.p95)));
  const y = scaleLinear().domain([0, highest]).nice(4).range([height - BASE, TOP]);
  const chosen = bestWithin(steps, budget);
  return {
    width,
    height,
    title: finding(chosen, most, steps),
    marks: [
      ...ticks(y).map((tick) => line('grid', SIDE, y(tick), width - SIDE, y(tick))),
      ...stairs(steps, most, x, y),
      text(SIDE, 14, 'Share of all harm taken away', 'ink-2'),
      ...ticks(y).flatMap((tick) => tickWord(tick, steps, { width, x, y })),
      line('axis', SIDE, height - BASE, width - SIDE, height - BASE),
      line('ember', x(budget), TOP - 8, x(budget), height - BASE),
      circle('ember', x(budget), y(chosen?.cut ?? 0), 6),
    ],
  };
}

/** The best set that a budget allows, out of those known; null when the budget allows none. */
export function bestWithin(sets: readonly BestSet[], budget: number): BestSet | null {
  return sets.filter((set) => set.budget <= budget).reduce<BestSet | null>((best, set) => (best === null || set.budget > best.budget ? set : best), null);
}

function finding(chosen: BestSet | null, most: number, steps: readonly BestSet[]): string {
  const now = chosen === null ? 'Nothing is taken away without effort.' : `${chosen.budget} points of effort take away ${percent(chosen.cut)} of the harm.`;
  const all = steps.at(-1);
  return all === undefined ? now : `${now} ${most} points take away ${percent(all.cut)}. By this model, which is our judgement.`;
}

type Scale = (value: number) => number;
type TickScale = Scale & { ticks: (count: number) => number[] };

function ticks(y: TickScale): readonly number[] {
  return y.ticks(4).filter((tick) => tick > 0);
}

/** Under its line at the left end, or at the right when the steps pass there; nowhere when they pass at both. */
function tickWord(tick: number, steps: readonly BestSet[], { width, x, y }: { readonly width: ChartWidth; readonly x: Scale; readonly y: Scale }): readonly Mark[] {
  const [top, bottom] = [y(tick) + 2, y(tick) + 19];
  const passes = (from: number, to: number): boolean => {
    const cuts = steps.filter((set, index) => x(set.budget) <= to && (steps[index + 1] === undefined || x(steps[index + 1]?.budget ?? 0) >= from)).map((set) => y(set.cut));
    return Math.min(...cuts) < bottom && Math.max(...cuts) > top;
  };
  if (!passes(SIDE, SIDE + TICK_WORD)) return [text(SIDE, y(tick) + 15, percent(tick), 'ink-2', { halo: true })];
  return passes(width - SIDE - TICK_WORD, width - SIDE) ? [] : [text(width - SIDE, y(tick) + 15, percent(tick), 'ink-2', { halo: true, anchor: 'end' })];
}

interface Step { readonly at: number; readonly cut: number; readonly low: number; readonly high: number }

function stairs(steps: readonly BestSet[], most: number, x: Scale, y: Scale): readonly Mark[] {
  const points: Step[] = steps.map((set) => ({ at: set.budget, cut: set.cut, low: set.cutInterval.p05, high: set.cutInterval.p95 }));
  const first = points[0];
  if (first === undefined) return [];
  if (first.at > 0) points.unshift({ at: 0, cut: 0, low: 0, high: 0 });
  const last = points.at(-1) ?? first;
  if (last.at < most) points.push({ ...last, at: most });
  const band = area<Step>().x((point) => x(point.at)).y0((point) => y(point.low)).y1((point) => y(point.high)).curve(curveStepAfter)(points);
  const middle = curve<Step>().x((point) => x(point.at)).y((point) => y(point.cut)).curve(curveStepAfter)(points);
  return [path('grain', band ?? ''), path('curve', middle ?? '')];
}
