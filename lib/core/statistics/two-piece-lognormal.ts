import { Z95 } from './clipped-lognormal';

/**
 * A quantity known by a low, middle and high value, at a given standard normal z: middle at 0, low at the
 * 5th and high at the 95th percentile, lognormal on each side, and never outside [low, high]
 * (amendment A13): x = mid·e^(z·ln(mid/low)/z95) for z < 0, mid·e^(z·ln(high/mid)/z95) for z ≥ 0.
 * @param levels 0 < low ≤ mid ≤ high
 * @param z any number
 */
export function twoPieceLognormal(levels: { readonly low: number; readonly mid: number; readonly high: number }, z: number): number {
  const { low, mid, high } = levels;
  const ratio = z < 0 ? mid / low : high / mid;
  return Math.min(high, Math.max(low, mid * Math.exp((z * Math.log(ratio)) / Z95)));
}
