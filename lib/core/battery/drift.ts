import { theilSen, type TrendPoint } from '@/lib/core/statistics/theil-sen';

/** One check of a pack: day since any fixed day, and the figure watched (cell spread in V, or resistance). */
export interface CheckedFigure { readonly day: number; readonly value: number }

export interface Drift {
  /** per day */
  readonly slope: number;
  /** 95 % interval of the slope; null when there are too few checks for one */
  readonly interval: { readonly low: number; readonly high: number } | null;
  /** only when the interval leaves zero out */
  readonly trend: 'rising' | 'falling' | 'not shown';
}

const CONFIDENCE = 0.95;

/**
 * Whether a figure of a pack drifts over its checks: Theil–Sen slope with its exact 95 % interval, flagged
 * only when the interval leaves zero out. With fewer than five checks there is no such interval, and
 * nothing is flagged (amendment A31).
 * @param checks in any order
 * @returns null with fewer than two different days: there is no slope
 */
export function drift(checks: readonly CheckedFigure[]): Drift | null {
  const points = checks.map(({ day, value }): TrendPoint => ({ x: day, y: value }));
  const line = theilSen(points, CONFIDENCE);
  if (line === null) return null;
  return { slope: line.slope, interval: line.interval, trend: trendOf(line.interval) };
}

function trendOf(interval: Drift['interval']): Drift['trend'] {
  if (interval === null) return 'not shown';
  if (interval.low > 0) return 'rising';
  return interval.high < 0 ? 'falling' : 'not shown';
}
