import { ok, refuse, type Result, type Volts } from '@/lib/units/quantity';
import { REST_VOLTAGE } from '@/lib/reference/rest-voltage';

/** The table of `REST_VOLTAGE` is for cells that are full at this. */
const TABLE_FULL = 4.2;
/** Outside this a cell is not empty or full but damaged or misread, so no share of charge is named. */
const SOUND = { lowest: 3, highest: 4.25 } as const;

/**
 * State of charge of a resting cell, straight lines between the points of `REST_VOLTAGE`; 0 % below its
 * first and 100 % above its last point. Common practice, good to ten per cent at best, and wrong while
 * a pack is under load or has just been used.
 * @param volts of one cell, at rest, 3.0 to 4.25 V
 * @param full full voltage of the cell; there is a table for 4.20 V only
 * @returns per cent, 0 to 100; refused outside the range, where the pack check decides
 */
export function stateOfCharge(volts: Volts, full: Volts): Result<number> {
  if (full !== TABLE_FULL) return refuse(`there is no table of charge for cells that are full at ${full} V`);
  if (!(volts >= SOUND.lowest && volts <= SOUND.highest)) {
    return refuse(`a cell at rest lies between ${SOUND.lowest} and ${SOUND.highest} V; at ${volts} V it is damaged or misread`);
  }
  const index = REST_VOLTAGE.findIndex((point) => volts <= point.volts);
  const above = REST_VOLTAGE[index];
  const below = REST_VOLTAGE[index - 1];
  if (above === undefined) return ok(100);
  if (below === undefined || volts === above.volts) return ok(above.charge);
  const way = (volts - below.volts) / (above.volts - below.volts);
  return ok(below.charge + way * (above.charge - below.charge));
}
