import type { AirChangesPerHour, Seconds } from '@/lib/units/quantity';

/** Air changes of a room per second. */
export function perSecond(airChanges: AirChangesPerHour): number { return airChanges / 3600; }

/** Below this k·t the difference in `filled` would lose digits, so its series is used. */
const SERIES_BELOW = 1e-2;

/**
 * Seconds of release that are still in the room after a steady release of length t: (1 − e^(−kt)) / k,
 * and t itself in a room without air exchange (the limit k → 0).
 * @param k air changes per second, 0 or more
 * @param t 0 or more
 */
function kept(k: number, t: number): number {
  return k === 0 ? t : -Math.expm1(-k * t) / k;
}

/** Integral of `kept` from 0 to t: (t − kept(t)) / k, and t²/2 when k = 0. */
function filled(k: number, t: number): number {
  const x = k * t;
  if (x >= SERIES_BELOW) return (t - kept(k, t)) / k;
  return t * t * (1 / 2 - x / 6 + x ** 2 / 24 - x ** 3 / 120 + x ** 4 / 720 - x ** 5 / 5040 + x ** 6 / 40320);
}

/**
 * Share of the released mass that is in the air of a well-mixed room at time t, for a steady release:
 * t ≤ τ: (1 − e^(−kt)) / (kτ); t > τ: its value at τ times e^(−k(t−τ)). Concentration is mass · share / V.
 * Solves V dC/dt = G − Q·C with C(0) = 0. Source: textbook (REFERENCES C, MEM H). A well-mixed room
 * gives too little near the fire; nothing is taken to settle on walls.
 * @param k air changes per second, 0 or more
 * @param release how long the release lasts (τ), above 0
 * @param t seconds from the start of the release, 0 or more
 * @returns 0 to 1
 */
export function shareInAir(k: number, release: Seconds, t: Seconds): number {
  if (t <= release) return kept(k, t) / release;
  return (kept(k, release) / release) * Math.exp(-k * (t - release));
}

/**
 * Integral of `shareInAir` from the start of the release to t, in seconds: what somebody who stays has
 * breathed, per unit of released mass and room volume.
 */
export function shareIntegral(k: number, release: Seconds, t: Seconds): Seconds {
  if (t <= release) return (filled(k, t) / release) as Seconds;
  return ((filled(k, release) + kept(k, release) * kept(k, t - release)) / release) as Seconds;
}
