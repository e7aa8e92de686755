import { quantilesInPlace } from '@/lib/core/sampling/quantiles';
import type { Sampled } from '@/lib/core/result';

/**
 * Mean, its standard error and the 5th, 50th and 95th percentile of draws. Reorders `values`.
 * @param values at least two finite numbers
 */
export function sampledInPlace(values: Float64Array): Sampled {
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) * (value - mean);
  const se = Math.sqrt(squares / (values.length - 1) / values.length);
  const [p05 = 0, p50 = 0, p95 = 0] = quantilesInPlace(values, [0.05, 0.5, 0.95]);
  return { mean, se, p05, p50, p95 };
}
