import type { Minutes, Seconds } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { findRoot } from '@/lib/core/statistics/find-root';
import { type AeglCurve, aeglAt } from './aegl-curve';
import { concentrationPpm, type RoomGas } from './room-gas';
import { secondsByExposure } from './time-by-exposure';
import { perSecond } from './well-mixed';

/** No further than the guideline tables go: eight hours (amendment A37). */
const LONGEST_LOOK = (8 * 3600) as Seconds;

/**
 * First time, from the start of the release, at which the room reaches a guideline level: by the whole
 * exposure so far (`secondsByExposure`), or, in the first edition of the content, by the momentary
 * concentration.
 * @returns null when the level is not reached within eight hours
 */
export function secondsToAegl(model: PhysicsModel, curve: AeglCurve, room: RoomGas): Seconds | null {
  return model.timeToAegl === 'whole exposure' ? secondsByExposure(model, curve, room, LONGEST_LOOK) : secondsByMoment(model, curve, room);
}

/**
 * First time at which C(t) ≥ level(t).
 * While the release lasts C rises and the level does not, so they cross once at most. Afterwards
 * ln C falls as −k·t and ln level as −b·ln t on each stretch of the table: their difference has one top,
 * at t = b/k, and a crossing can only lie before it.
 */
function secondsByMoment(model: PhysicsModel, curve: AeglCurve, room: RoomGas): Seconds | null {
  const excess = (t: number): number => concentrationPpm(model, room, t as Seconds) / aeglAt(curve, (t / 60) as Minutes) - 1;
  const risingUntil = Math.min(room.release, LONGEST_LOOK);
  if (excess(risingUntil) >= 0) return findRoot(excess, 0, risingUntil) as Seconds;
  const k = perSecond(room.airChanges);
  let from = risingUntil;
  for (const stretch of stretchesAfter(curve, risingUntil)) {
    const top = Math.min(stretch.until, Math.max(from, stretch.inverseExponent / k));
    if (top > from && excess(top) >= 0) return findRoot(excess, from, top) as Seconds;
    from = stretch.until;
  }
  return null;
}

/** Stretches of the curve that end after a given time, in seconds, each with its 1/n; before the table begins 1/n is 0. */
function stretchesAfter(curve: AeglCurve, start: number): readonly { readonly until: number; readonly inverseExponent: number }[] {
  return curve.durations
    .map((minutes, index) => ({ until: Math.min(minutes * 60, LONGEST_LOOK), inverseExponent: curve.inverseExponents[index - 1] ?? 0 }))
    .filter((stretch) => stretch.until > start);
}
