import type { Seconds } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { simpson } from '@/lib/core/statistics/simpson';
import { concentrationPpm, type RoomGas } from './room-gas';
import { perSecond } from './well-mixed';

/** Enough for seven digits: the integrand below is smooth. */
const INTERVALS = 128;

/**
 * ∫₀ᵗ Cⁿ dt of a well-mixed room as a function of t, in ppmⁿ·s: the left side of Cⁿ·t = constant for a
 * concentration that changes. While C rises the integral is by Simpson's rule in √t, which takes the corner
 * out of Cⁿ at the start; afterwards C falls as e^(−kt) and it is closed.
 * @param n 1 or more
 * @returns a function of seconds from the start of the release, 0 or more
 */
export function harmIntegral(model: PhysicsModel, room: RoomGas, n: number): (t: number) => number {
  const k = perSecond(room.airChanges);
  const power = (t: number): number => concentrationPpm(model, room, t as Seconds) ** n;
  const rising = (t: number): number => simpson((root) => 2 * root * power(root * root), 0, Math.sqrt(t), INTERVALS);
  const untilEnd = rising(room.release);
  const peak = power(room.release);
  return (t) => {
    if (t <= room.release) return rising(t);
    const since = t - room.release;
    return untilEnd + peak * (k === 0 ? since : -Math.expm1(-n * k * since) / (n * k));
  };
}
