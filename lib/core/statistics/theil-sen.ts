import { outermostRank } from './discordant-pairs';

export interface TrendPoint { readonly x: number; readonly y: number }
export interface TrendLine {
  /** median of the slopes between all pairs of points */
  readonly slope: number;
  /** exact confidence interval of the slope; null when there are too few points */
  readonly interval: { readonly low: number; readonly high: number } | null;
}

/**
 * Theil–Sen line: the median of all pairwise slopes, with the interval that the exact distribution of
 * Kendall's discordant pairs gives (Sen 1968, from memory; checked against counting every order). No
 * error needs to be normal, and a single wild check does not turn it. Equal values make the interval
 * wider, and so does each pair at the same x, which counts as if it could have gone either way.
 * @param points in any order
 * @param confidence two-sided, between 0 and 1
 * @returns null without two different x
 */
export function theilSen(points: readonly TrendPoint[], confidence: number): TrendLine | null {
  const slopes: number[] = [];
  let sameX = 0;
  points.forEach((point, index) => {
    for (const other of points.slice(index + 1)) {
      if (other.x === point.x) sameX += 1;
      else slopes.push((other.y - point.y) / (other.x - point.x));
    }
  });
  if (slopes.length === 0) return null;
  slopes.sort((one, other) => one - other);
  const rank = outermostRank(points.length, confidence) - sameX;
  return { slope: medianOf(slopes), interval: rank < 1 ? null : { low: at(slopes, rank - 1), high: at(slopes, slopes.length - rank) } };
}

function medianOf(sorted: readonly number[]): number {
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? at(sorted, middle) : (at(sorted, middle - 1) + at(sorted, middle)) / 2;
}

function at(values: readonly number[], index: number): number {
  const value = values[index];
  if (value === undefined) throw new Error(`no slope of rank ${index}`);
  return value;
}
