import { ppm } from '@/lib/wording/measures';
import { line, text, textLines } from './marks';
import { LINE_HEIGHT, type LineMark, type TextMark, WIDE } from './scene';
import type { SmokePlot } from './smoke-plot';
import type { SmokeThresholds } from './smoke-points';

interface Limit { readonly at: number; readonly role: 'limit' | 'lesser'; readonly words: readonly [string, string]; readonly narrow: string }

/** The thresholds, lowest first, with what is published about each. */
export function limitsOf({ irritation, dangerous, lifeAtRisk }: SmokeThresholds): readonly Limit[] {
  return [
    { at: irritation, role: 'lesser', words: [`${ppm(irritation)}: irritation begins;`, 'asthma may start here'], narrow: `${ppm(irritation)}: irritation; asthma may start` },
    { at: dangerous, role: 'limit', words: [`${ppm(dangerous)}: immediately`, 'dangerous (published)'], narrow: `${ppm(dangerous)}: immediately dangerous` },
    { at: lifeAtRisk, role: 'limit', words: [`${ppm(lifeAtRisk)}, half an hour:`, 'life at risk (published)'], narrow: `${ppm(lifeAtRisk)}, half an hour: life at risk` },
  ];
}

/**
 * The thresholds that the scale reaches, as lines with their words: beside the drawing where there is room,
 * else on the line. In a small room they lie close together; then the words give way upward, lowest first.
 */
export function limitMarks(plot: SmokePlot, limits: readonly Limit[]): { readonly lines: readonly LineMark[]; readonly words: readonly TextMark[] } {
  const drawn = limits.filter((limit) => plot.y(limit.at) >= plot.top);
  const wide = plot.width === WIDE;
  const height = wide ? 2 * LINE_HEIGHT + 3 : LINE_HEIGHT + 2;
  let ceiling = plot.bottom + (wide ? 10 : -1);
  const placed = drawn.map((limit) => {
    const y = plot.y(limit.at);
    const bottom = Math.min(ceiling, wide ? y + LINE_HEIGHT + 3 : y - 2);
    ceiling = bottom - height;
    return { limit, y, bottom };
  });
  return {
    lines: placed.flatMap(({ limit, y, bottom }) => [line(limit.role, plot.left, y, plot.right, y), ...(wide ? [line('tick', plot.right, y, plot.right + 10, bottom - LINE_HEIGHT - 3)] : [])]),
    words: placed.flatMap(({ limit, bottom }) => {
      const strong = limit.role === 'limit';
      if (!wide) return [text(plot.right, bottom - 4, limit.narrow, 'ink', { anchor: 'end', halo: true, strong })];
      return textLines(plot.right + 14, bottom - LINE_HEIGHT - 4, limit.words, 'ink', { strong });
    }),
  };
}
