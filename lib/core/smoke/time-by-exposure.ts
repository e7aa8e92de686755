import type { Minutes, Seconds } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { findRoot } from '@/lib/core/statistics/find-root';
import { type AeglCurve, aeglAt } from './aegl-curve';
import { harmIntegral } from './harm-integral';
import { concentrationPpm, type RoomGas } from './room-gas';
import { perSecond } from './well-mixed';

/** A stretch of the guideline table on which one n of Cⁿ·t = constant holds. */
interface Stretch { readonly from: number; readonly until: number; readonly n: number }

/**
 * First time, from the start of the release, at which the whole exposure so far is as harmful as a
 * guideline level borne for that time: ∫₀ᵗ Cⁿ dt ≥ level(t)ⁿ · t, with the n of the two table points
 * around t (ten Berge, as NIOSH uses it; REFERENCES B.3, READ-P). Before the table begins its first value
 * and first n hold, and where two points are equal, so that they tell no n, that of the stretch before
 * (our judgement). Where n changes between two stretches the level may be reached in a step, at that point.
 * @param longest no further than this, seconds
 * @returns null when it is not reached
 */
export function secondsByExposure(model: PhysicsModel, curve: AeglCurve, room: RoomGas, longest: Seconds): Seconds | null {
  for (const stretch of stretchesOf(curve, longest)) {
    const found = firstIn(model, curve, room, stretch);
    if (found !== null) return found;
  }
  return null;
}

function firstIn(model: PhysicsModel, curve: AeglCurve, room: RoomGas, stretch: Stretch): Seconds | null {
  const harm = harmIntegral(model, room, stretch.n);
  // both sides over t, so that it is the mean exposure that is compared, in the level's own size
  const excess = (t: number): number => harm(t) / (t * aeglAt(curve, (t / 60) as Minutes) ** stretch.n) - 1;
  let before = stretch.from;
  if (before > 0 && excess(before) >= 0) return before as Seconds;
  for (const point of turningPoints(model, curve, room, stretch)) {
    if (excess(point) >= 0) return findRoot(excess, before === 0 ? point * TINY : before, point) as Seconds;
    before = point;
  }
  return null;
}

/** Share of the first turning point at which there is next to no gas yet. */
const TINY = 1e-9;

/**
 * Points between which ∫Cⁿ − levelⁿ·t only falls or, once, turns to rise: the end of the release, the
 * moment at which the falling concentration passes a level that is held, and the end of the stretch.
 */
function turningPoints(model: PhysicsModel, curve: AeglCurve, room: RoomGas, { from, until }: Stretch): readonly number[] {
  const level = aeglAt(curve, (until / 60) as Minutes);
  const peak = concentrationPpm(model, room, room.release);
  const k = perSecond(room.airChanges);
  const falls = k > 0 && peak > level ? room.release + Math.log(peak / level) / k : until;
  return [room.release as number, falls, until].filter((point) => point > from && point <= until).sort((one, other) => one - other);
}

function stretchesOf(curve: AeglCurve, longest: Seconds): readonly Stretch[] {
  const { durations, inverseExponents } = curve;
  const first = inverseExponents.find((one) => one > 0);
  // a table with one value, or none that ever falls, tells no n: then only the amount breathed counts
  let n = first === undefined ? 1 : 1 / first;
  const ends = [...durations.map((minutes) => minutes * 60), Number.POSITIVE_INFINITY];
  return ends.map((end, index): Stretch => {
    const inverse = inverseExponents[index - 1] ?? 0;
    if (inverse > 0) n = 1 / inverse;
    return { from: index === 0 ? 0 : ends[index - 1] ?? 0, until: Math.min(end, longest), n };
  }).filter((stretch) => stretch.until > stretch.from);
}
