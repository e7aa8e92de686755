import { area, curveLinear, line as curve } from 'd3-shape';
import type { SmokeCase } from '@/lib/core/result';
import { ppm } from '@/lib/wording/measures';
import { whole } from '@/lib/wording/numbers';
import { circle, line, path, text } from './marks';
import { type ChartWidth, type Mark, type Scene, type TextMark, WIDE } from './scene';
import { limitMarks, limitsOf } from './smoke-limits';
import { type SmokePlot, smokePlot } from './smoke-plot';
import { type SmokePoint, smokePoints, smokeSpan, type SmokeThresholds } from './smoke-points';
import { textBox, touch } from './text-box';
import { textWidth } from './text-width';

/** The curve with its thresholds. What it tells is where to be at the first smoke, never how long one may stay. */
export function smokeScene(smoke: SmokeCase, thresholds: SmokeThresholds, width: ChartWidth): Scene {
  const plot = smokePlot(smoke, thresholds, width);
  const points = smokePoints(smoke, smokeSpan(smoke));
  const words = [...timeWords(plot, smoke), ...limitMarks(plot, limitsOf(thresholds)).words];
  return {
    width,
    height: plot.height,
    title: finding(smoke, thresholds),
    marks: [...frame(plot), ...curves(plot, points), ...limitMarks(plot, limitsOf(thresholds)).lines, ...times(plot, smoke), ...words, ...middleWords(plot, points, words)],
  };
}

function finding(smoke: SmokeCase, thresholds: SmokeThresholds): string {
  const { low, mid, high } = smoke.levels;
  const peak = `Smoke in the room on a well-mixed model: at most ${ppm(mid.HF.peakPpm)} of hydrogen fluoride on the middle estimate, ${ppm(low.HF.peakPpm)} to ${ppm(high.HF.peakPpm)} over the range.`;
  const reached = high.HF.peakPpm >= thresholds.dangerous ? `It can pass ${ppm(thresholds.dangerous)}, which is immediately dangerous.` : `Irritation begins at ${ppm(thresholds.irritation)}.`;
  return `${peak} ${reached} Near the pack it is more. Leave at the first smoke.`;
}

function frame(plot: SmokePlot): readonly Mark[] {
  const { left, right, bottom, x, y } = plot;
  const every = Math.max(1, Math.ceil(plot.minutes / (plot.width === WIDE ? 10 : 5)));
  const minutes = Array.from({ length: Math.floor(plot.minutes / every) + 1 }, (_, index) => index * every);
  return [
    text(0, 13, 'Hydrogen fluoride, ppm', 'ink-2'),
    ...plot.yTicks.flatMap((tick) => [line('grid', left, y(tick), right, y(tick)), text(left - 7, y(tick) + 4.5, whole(tick), 'ink-2', { anchor: 'end' })]),
    line('axis', left, bottom, right, bottom),
    ...minutes.flatMap((minute) => [
      line('axis', x(minute * 60), bottom, x(minute * 60), bottom + 6),
      text(x(minute * 60), bottom + 21, String(minute), 'ink-2', { anchor: minute === plot.minutes && plot.width !== WIDE ? 'end' : 'middle' }),
    ]),
    text(right, plot.height - 3, 'minutes from the first smoke', 'ink-2', { anchor: 'end' }),
  ];
}

function curves(plot: SmokePlot, points: readonly SmokePoint[]): readonly Mark[] {
  const x = (point: SmokePoint): number => plot.x(point.seconds);
  const band = area<SmokePoint>().x(x).y0((point) => plot.y(point.low)).y1((point) => plot.y(point.high)).curve(curveLinear)(points);
  const middle = curve<SmokePoint>().x(x).y((point) => plot.y(point.mid))(points);
  return [path('grain', band ?? ''), path('curve', middle ?? '')];
}

/** The moment that asks for a person is the first one. When the room is empty is a fact of the drill, in ink. */
function times(plot: SmokePlot, smoke: SmokeCase): readonly Mark[] {
  const empty = plot.x(smoke.evacuationSeconds);
  return [line('lesser', empty, plot.top - 4, empty, plot.bottom), line('ember', plot.left, plot.top - 14, plot.left, plot.bottom), circle('ember', plot.left, plot.bottom, 6)];
}

function timeWords(plot: SmokePlot, smoke: SmokeCase): readonly TextMark[] {
  const empty = plot.x(smoke.evacuationSeconds);
  const words = plot.width === WIDE ? 'the last person is out' : 'last person out';
  const fits = empty + 6 + textWidth(words) < plot.right;
  return [
    text(plot.left + 8, plot.top - 12, 'leave here, at the first smoke', 'ember', { strong: true, halo: true }),
    text(fits ? empty + 6 : empty - 6, plot.top + 8, words, 'ink-2', { halo: true, anchor: fits ? 'start' : 'end' }),
  ];
}

/** The middle is named on its curve where nothing else stands; where there is no such place the caption names it. */
function middleWords(plot: SmokePlot, points: readonly SmokePoint[], others: readonly TextMark[]): readonly Mark[] {
  for (const share of [0.6, 0.5, 0.4, 0.7, 0.3]) {
    const at = points[Math.round((points.length - 1) * share)];
    for (const rise of at === undefined ? [] : [-8, 20]) {
      const words = text(plot.x(at?.seconds ?? 0), plot.y(at?.mid ?? 0) + rise, 'middle estimate', 'ink', { anchor: 'middle', halo: true, strong: true });
      const box = textBox(words);
      if (box.bottom < plot.bottom && box.left > plot.left && box.right < plot.right && !others.some((other) => touch(box, textBox(other)))) return [words];
    }
  }
  return [];
}
