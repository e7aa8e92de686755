import { findRoot } from './find-root';
import { incompleteGamma } from './incomplete-gamma';
import { logGamma } from './log-gamma';

/**
 * Value below which a gamma variable falls with probability p.
 * @param p above 0 and below 1
 * @param shape above 0
 * @param rate above 0
 * @returns in 1/rate
 * @throws outside these: only a broken caller can ask it
 */
export function gammaQuantile(p: number, shape: number, rate: number): number {
  if (!(p > 0 && p < 1 && shape > 0 && rate > 0)) throw new Error(`no gamma quantile for p ${p}, shape ${shape}, rate ${rate}`);
  // P(a, x) ≤ x^a / Γ(a + 1), so the quantile is never below this
  const least = (Math.log(p) + logGamma(shape + 1)) / shape;
  const distance = p < 0.5
    ? (logX: number) => Math.log(incompleteGamma(shape, Math.exp(logX)).lower / p)
    : (logX: number) => Math.log((1 - p) / incompleteGamma(shape, Math.exp(logX)).upper);
  let most = Math.max(least, Math.log(shape)) + 0.5;
  while (distance(most) < 0) most += 0.5;
  let low = least - 1e-9;
  while (distance(low) > 0) low -= 0.5;
  return Math.exp(findRoot(distance, low, most)) / rate;
}

/**
 * Shape of the gamma distribution whose 95th percentile is `errorFactor` times its median, whatever its
 * mean (amendment A8): 0.4395 for a factor of 10, 0.8329 for 5.
 * @param errorFactor P95 / P50, 1.01 to 1e6
 * @throws outside that range: the content is checked against it
 */
export function gammaShapeOf(errorFactor: number): number {
  if (!(errorFactor >= 1.01 && errorFactor <= 1e6)) throw new Error(`an error factor between 1.01 and 1e6 is wanted, got ${errorFactor}`);
  const logFactor = Math.log(errorFactor);
  const excess = (logShape: number): number => {
    const shape = Math.exp(logShape);
    return Math.log(gammaQuantile(0.95, shape, 1) / gammaQuantile(0.5, shape, 1)) - logFactor;
  };
  return Math.exp(findRoot(excess, Math.log(0.02), Math.log(1e5)));
}

/** Value below which a chi-square variable falls with probability p: a gamma variable of half the degrees, doubled. */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  return gammaQuantile(p, degreesOfFreedom / 2, 0.5);
}
