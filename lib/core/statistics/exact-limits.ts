import { findRoot } from './find-root';
import { chiSquareQuantile } from './gamma';
import { incompleteBeta } from './incomplete-beta';

export interface Limits { readonly low: number; readonly high: number }

/**
 * Exact limits of a Poisson mean from a count (Garwood): ½χ²(α/2; 2k) and ½χ²(1 − α/2; 2k + 2), and 0
 * below for no events. Source: Garwood 1936 (REFERENCES E.1).
 * @param events whole, 0 or more
 * @param confidence two-sided, between 0 and 1
 * @throws outside these
 */
export function poissonLimits(events: number, confidence: number): Limits {
  checkConfidence(confidence);
  if (!Number.isInteger(events) || events < 0) throw new Error(`events are counted, got ${events}`);
  const tail = (1 - confidence) / 2;
  return {
    low: events === 0 ? 0 : chiSquareQuantile(tail, 2 * events) / 2,
    high: chiSquareQuantile(1 - tail, 2 * events + 2) / 2,
  };
}

/**
 * Exact limits of a rate: those of the count divided by the exposure in which it was seen.
 * @param exposure above 0
 */
export function rateLimits(events: number, exposure: number, confidence: number): Limits {
  if (!(exposure > 0)) throw new Error(`a rate needs an exposure above 0, got ${exposure}`);
  const { low, high } = poissonLimits(events, confidence);
  return { low: low / exposure, high: high / exposure };
}

/**
 * Exact limits of a share from a count out of a number (Clopper–Pearson): where the chance of so many or
 * more, and of so few or fewer, is α/2. Source: Clopper and Pearson 1934 (REFERENCES E.2).
 * @param hits whole, 0 to trials
 * @param trials whole, 1 or more
 * @param confidence two-sided, between 0 and 1
 */
export function shareLimits(hits: number, trials: number, confidence: number): Limits {
  checkConfidence(confidence);
  if (!(Number.isInteger(hits) && Number.isInteger(trials) && hits >= 0 && trials >= 1 && hits <= trials)) {
    throw new Error(`hits are counted out of trials, got ${hits} of ${trials}`);
  }
  const tail = (1 - confidence) / 2;
  return {
    low: hits === 0 ? 0 : findRoot((share) => incompleteBeta(share, hits, trials - hits + 1) - tail, 0, 1),
    high: hits === trials ? 1 : findRoot((share) => tail - incompleteBeta(1 - share, trials - hits, hits + 1), 0, 1),
  };
}

function checkConfidence(confidence: number): void {
  if (!(confidence > 0 && confidence < 1)) throw new Error(`a confidence lies between 0 and 1, got ${confidence}`);
}
