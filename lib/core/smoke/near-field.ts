import type { CubicMetres, PartsPerMillion, Seconds } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { highestBreathedPpm, type RoomGas } from './room-gas';

/**
 * How much thicker smoke is beside the packs than in a well-mixed room: √(V / nearRefVolume), never below
 * 1 or above nearFactorMax. Our judgement (amendment A18): a small room is taken as evenly mixed, and
 * a large one at most as unevenly as the worst mixing factor in REFERENCES C (CDC).
 * @param volume above 0
 */
export function nearFieldFactor(model: PhysicsModel, volume: CubicMetres): number {
  return Math.min(model.nearFactorMax, Math.max(1, Math.sqrt(volume / model.nearRefVolume)));
}

/**
 * Highest concentration breathed beside the packs: the factor times the room at the moment people step
 * away, which they do after nearTime at the latest.
 */
export function nearFieldPpm(model: PhysicsModel, room: RoomGas, stay: Seconds): PartsPerMillion {
  const besideUntil = Math.min(stay, model.nearTime.mid) as Seconds;
  return (nearFieldFactor(model, room.volume) * highestBreathedPpm(model, room, besideUntil)) as PartsPerMillion;
}
