import { normalCdf } from './normal-cdf';

/** Φ⁻¹(0.95): an error factor is P95 / P50, so ln(error factor) is this many standard deviations. */
export const Z95 = 1.6448536269514722;

/** Standard deviation of ln X from an error factor of 1 or more: s = ln(P95/P50) / z95. */
export function logSpread(errorFactor: number): number {
  if (!(errorFactor >= 1)) throw new Error(`an error factor is 1 or more, got ${errorFactor}`);
  return Math.log(errorFactor) / Z95;
}

/**
 * Mean of a power of a lognormal clipped at 1: E[X^u] with X = min(1, median·e^(s·z)), z standard normal:
 * e^(u·m + u²s²/2) · Φ((−m − u·s²)/s) + 1 − Φ(−m/s), m = ln median (amendments A2, A3, A48).
 * With u = 1 the mean of a probability of failure; with u = ½ of the half-working control.
 * @param median above 0 to 1
 * @param errorFactor P95 / P50, 1 or more; exactly 1 is a constant
 * @param power u, 0 or more
 * @returns above 0 to 1
 */
export function clippedPowerMean(median: number, errorFactor: number, power: number): number {
  if (!(median > 0 && median <= 1)) throw new Error(`a median probability lies above 0 and up to 1, got ${median}`);
  const s = logSpread(errorFactor);
  if (s === 0) return median ** power;
  const m = Math.log(median);
  const below = Math.exp(power * m + (power * power * s * s) / 2) * normalCdf((-m - power * s * s) / s);
  return below + normalCdf(m / s);
}
