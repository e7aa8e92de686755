import { drift } from '@/lib/core/battery/drift';
import { DAY_MS } from '@/lib/units/time';
import type { CheckRecord } from './check-record';

/** The cell spread of one check that measured it. */
export interface SpreadPoint { readonly at: Date; readonly spreadV: number }

export interface SpreadTrend {
  /** oldest first */
  readonly points: readonly SpreadPoint[];
  readonly trend: 'rising' | 'falling' | 'not shown' | 'too few';
  /** mV a month with its 95 % interval; null when there are too few checks for one */
  readonly mvAMonth: { readonly middle: number; readonly low: number; readonly high: number } | null;
  readonly words: string;
}

/** A figure "a month" out of less than two weeks says more than anybody knows, our judgement. */
const LEAST_SPAN_DAYS = 14;
const MV_A_MONTH = 1000 * (365.25 / 12);

/** Whether the cells of a pack drift apart over its checks (Theil–Sen slope, lib/core/battery/drift). */
export function spreadTrend(checks: readonly CheckRecord[]): SpreadTrend {
  const points = checks.flatMap(({ at, measures }): SpreadPoint[] => {
    const spread = measures['cellSpread'];
    return typeof spread === 'number' ? [{ at, spreadV: spread }] : [];
  }).sort((one, other) => one.at.getTime() - other.at.getTime());
  const checked = points.map(({ at, spreadV }) => ({ day: Math.floor(at.getTime() / DAY_MS), value: spreadV }));
  const span = (checked.at(-1)?.day ?? 0) - (checked[0]?.day ?? 0);
  const found = span < LEAST_SPAN_DAYS ? null : drift(checked);
  if (found === null || found.interval === null) return { points, trend: 'too few', mvAMonth: null, words: tooFew(points.length, span) };
  const mvAMonth = { middle: found.slope * MV_A_MONTH, low: found.interval.low * MV_A_MONTH, high: found.interval.high * MV_A_MONTH };
  return { points, trend: found.trend, mvAMonth, words: trendWords(found.trend, mvAMonth, points.length) };
}

function tooFew(count: number, span: number): string {
  if (count === 0) return 'No check has measured its cells yet.';
  if (count > 1 && span < LEAST_SPAN_DAYS) return `${count} checks within two weeks: too close together to tell a trend.`;
  return `${count === 1 ? 'One check' : `${count} checks`} measured its cells: too few to tell a trend from chance.`;
}

function trendWords(trend: 'rising' | 'falling' | 'not shown', { middle, low, high }: NonNullable<SpreadTrend['mvAMonth']>, count: number): string {
  const figures = `${middle.toFixed(1)} mV a month (between ${low.toFixed(1)} and ${high.toFixed(1)})`;
  switch (trend) {
    case 'rising': return `The cells drift apart by ${figures}.`;
    case 'falling': return `The cells come closer by ${figures.replaceAll('-', '')}.`;
    case 'not shown': return `Over ${count} checks no drift can be told from chance: ${figures}.`;
  }
}
