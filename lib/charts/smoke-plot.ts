import { scaleLinear } from 'd3-scale';
import type { SmokeCase } from '@/lib/core/result';
import { whole } from '@/lib/wording/numbers';
import { type ChartWidth, WIDE } from './scene';
import { smokeSpan, type SmokeThresholds } from './smoke-points';
import { textWidth } from './text-width';

/** Room for the words of the thresholds at the right of the wide drawing. */
const LABELS = 176;

/** Where the drawing lies and how it measures, px. */
export interface SmokePlot {
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

/** Edges and scales of the drawing; the scale reaches the dangerous threshold even where the smoke does not. */
export function smokePlot(smoke: SmokeCase, thresholds: SmokeThresholds, width: ChartWidth): SmokePlot {
  const wide = width === WIDE;
  const height = wide ? 340 : 320;
  const [top, bottom] = [46, height - 42];
  const span = smokeSpan(smoke);
  const most = Math.max(smoke.levels.high.HF.peakPpm, thresholds.dangerous) * 1.08;
  const y = scaleLinear().domain([0, most]).nice(5).range([bottom, top]);
  const yTicks = y.ticks(5);
  const left = Math.max(...yTicks.map((tick) => textWidth(whole(tick)))) + 10;
  const right = width - (wide ? LABELS : 6);
  const x = scaleLinear().domain([0, span]).range([left, right]);
  return { width, height, left, right, top, bottom, x, y, yTicks, minutes: span / 60 };
}
