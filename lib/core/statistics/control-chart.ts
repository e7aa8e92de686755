import { ok, refuse, type Result } from '@/lib/units/quantity';

/** A count and the size of the sample it was found in: hours, charges or pieces. */
export interface ChartSample { readonly count: number; readonly size: number }

export interface ChartPoint {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** a point on a limit is within it */
  readonly where: 'below' | 'within' | 'above';
}
export interface ControlChart { readonly centre: number; readonly points: readonly ChartPoint[] }

/** Limits lie three standard deviations from the centre (Shewhart). */
const SIGMAS = 3;

/**
 * u-chart: events per unit of exposure, session by session. Centre ū = Σ counts / Σ sizes, limits
 * ū ± 3·√(ū / size), never below 0. A point outside is a signal to look, not a proof; with few events
 * the upper limit is crossed too easily.
 * Source: NIST/SEMATECH e-Handbook 6.3.3.1 (REFERENCES E.2, READ-S), for counts in samples of one size.
 * @param samples in order of time; counts whole, sizes above 0
 * @returns refused without samples or with a count or size out of range
 */
export function uChart(samples: readonly ChartSample[]): Result<ControlChart> {
  return chart(samples, (centre, size) => Math.sqrt(centre / size), Number.POSITIVE_INFINITY);
}

/** c-chart: counts in samples of equal size: centre c̄, limits c̄ ± 3·√c̄. Same source. */
export function cChart(counts: readonly number[]): Result<ControlChart> {
  return uChart(counts.map((count) => ({ count, size: 1 })));
}

/**
 * p-chart: share of pieces that fail, limits p̄ ± 3·√(p̄(1 − p̄) / size) within 0 and 1.
 * Source: e-Handbook 6.3.3.2 (REFERENCES E.2, READ-S).
 * @returns refused also where a count is larger than its sample
 */
export function pChart(samples: readonly ChartSample[]): Result<ControlChart> {
  if (samples.some(({ count, size }) => count > size)) return refuse('no sample can have more hits than pieces');
  return chart(samples, (centre, size) => Math.sqrt((centre * (1 - centre)) / size), 1);
}

function chart(samples: readonly ChartSample[], deviation: (centre: number, size: number) => number, most: number): Result<ControlChart> {
  if (samples.length === 0) return refuse('a control chart needs at least one sample');
  if (samples.some(({ count }) => !Number.isInteger(count) || count < 0)) return refuse('counts must be whole and not negative');
  if (samples.some(({ size }) => !(Number.isFinite(size) && size > 0))) return refuse('every sample needs a size above 0');
  const total = (of: keyof ChartSample): number => samples.reduce((sum, sample) => sum + sample[of], 0);
  const centre = total('count') / total('size');
  const points = samples.map(({ count, size }): ChartPoint => {
    const value = count / size;
    const reach = SIGMAS * deviation(centre, size);
    const low = Math.max(0, centre - reach);
    const high = Math.min(most, centre + reach);
    const outside = value > high ? 'above' : 'below';
    return { value, low, high, where: value > high || value < low ? outside : 'within' };
  });
  return ok({ centre, points });
}
