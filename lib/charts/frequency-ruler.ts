import { scaleLog } from 'd3-scale';
import type { Sampled } from '@/lib/core/result';
import { frequencyWords } from '@/lib/wording/frequency';
import { line, path, rect, text } from './marks';
import type { Mark, Scene } from './scene';

/** Events per season at the ends of the ruler; what lies beyond stands at the end. */
const RAREST = 1e-4;
const OFTENEST = 10;
const WIDTH = 260;
const SIDE = 6;

/** Where a frequency stands on the ruler, px. */
export function onRuler(frequency: number): number {
  const scale = scaleLog().domain([RAREST, OFTENEST]).range([SIDE, WIDTH - SIDE]).clamp(true);
  return scale(Math.max(frequency, RAREST));
}

/**
 * How often a risk comes true, on a ruler of decades: sand over the 5th to 95th percentile, a plumb at the
 * closed form's mean.
 */
export function frequencyRulerScene(mean: number, range: Pick<Sampled, 'p05' | 'p95'>): Scene {
  const [from, to, at] = [onRuler(range.p05), onRuler(range.p95), onRuler(mean)];
  const base = 22;
  const known = mean > 0;
  return {
    width: WIDTH,
    height: 30,
    title: frequencyWords(mean, range),
    marks: [
      ...(known ? [rect('grain', from, 3, Math.max(2, to - from), 15)] : []),
      line('axis', SIDE, base, WIDTH - SIDE, base),
      ...ticks(base),
      ...(known ? [plumb(at, base - 1)] : []),
    ],
  };
}

/** The words over a column of rulers. */
export function frequencyScaleScene(): Scene {
  const words: readonly (readonly [number, string])[] = [[1e-3, '1 in 1,000'], [1e-1, '1 in 10'], [1, 'yearly']];
  return { width: WIDTH, height: 18, title: 'Events in a season', marks: words.map(([frequency, word]) => text(onRuler(frequency), 13, word, 'ink-2', { anchor: 'middle' })) };
}

/** A pointer like a plumb, its tip on the line at y. */
export function plumb(x: number, y: number, half = 5): Mark {
  return path('ink', `M${round(x)} ${y}l${-half} -8v-12h${2 * half}v12z`);
}

function ticks(base: number): readonly Mark[] {
  const decades = [1e-4, 1e-3, 1e-2, 1e-1, 1, 10];
  return decades.flatMap((decade) => [
    line('axis', onRuler(decade), base, onRuler(decade), base + 7),
    ...(decade === OFTENEST ? [] : [2, 5].map((step) => line('tick', onRuler(decade * step), base, onRuler(decade * step), base + 3.5))),
  ]);
}

function round(value: number): number { return Math.round(value * 10) / 10; }
