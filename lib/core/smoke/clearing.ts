import type { AirChangesPerHour, Minutes, PartsPerMillion } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { peakPpm, type RoomGas } from './room-gas';

/**
 * Time for clean air to thin a well-mixed room from one concentration to another:
 * t = ln(from / to) / air changes, in minutes.
 * Source: CDC 2003, Appendix B, Table B.1 (REFERENCES C.1, READ-P). Badly mixed rooms take up to ten
 * times as long.
 * @param from at least `to`
 * @param to above 0
 * @param airChanges above 0
 * @throws without any air exchange: such a room never clears, and no answer leads to one
 */
export function purgeTime(from: PartsPerMillion, to: PartsPerMillion, airChanges: AirChangesPerHour): Minutes {
  if (!(airChanges > 0)) throw new Error('a room without air exchange never clears');
  return ((Math.log(from / to) / airChanges) * 60) as Minutes;
}

/**
 * Minutes from the start of the release until a gas is down to its re-entry value, well mixed; 0 when it
 * never passes that value (amendment A37). Never a permission to go in: the fire service decides.
 */
export function clearingTime(model: PhysicsModel, room: RoomGas): Minutes {
  const peak = peakPpm(model, room);
  const limit = model.reentry[room.gas] as PartsPerMillion;
  if (peak <= limit) return 0 as Minutes;
  return (room.release / 60 + purgeTime(peak, limit, room.airChanges)) as Minutes;
}
