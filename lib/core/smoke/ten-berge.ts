import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';

/**
 * Concentration that does the same harm over another time, by Cⁿ·t = constant:
 * C₂ = C₁ · (t₁/t₂)^(1/n).
 * Source: ten Berge, as NIOSH uses it in its IDLH documentation (REFERENCES B.3, READ-P).
 * @param ppm concentration borne for `from`, 0 or more
 * @param from above 0
 * @param to above 0
 * @param inverseExponent 1/n, 0 or more; 0 where the harm does not depend on time
 * @returns ppm, 0 or more
 */
export function scaledToDuration(ppm: PartsPerMillion, from: Minutes, to: Minutes, inverseExponent: number): PartsPerMillion {
  return (ppm * (from / to) ** inverseExponent) as PartsPerMillion;
}
