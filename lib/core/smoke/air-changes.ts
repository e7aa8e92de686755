import type { AirChangesPerHour, CubicMetres, CubicMetresPerHour, Kelvin, Metres, MetresPerSecond, SquareMetres } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { singleSidedFlow } from './gids-phaff';

/** What is known of the air of the charging room. Only the figure that `mode` names is used. */
export interface AirSupply {
  /** measured, mechanical, openings or closed */
  readonly mode: string;
  /** above 0 */
  readonly volumeM3: number;
  readonly measuredAch: number;
  readonly flowM3PerHour: number;
  readonly openingM2: number;
  readonly openingHeightM: number;
}

/** Air changes per hour of a flow through a room, flow / volume. */
export function airChangesOf(flow: CubicMetresPerHour, volume: CubicMetres): AirChangesPerHour {
  return (flow / volume) as AirChangesPerHour;
}

/**
 * Air changes of the charging room from whatever is known (amendment A33). Openings and a fan never count
 * below a closed room: an opening of 0 m² or a fan of unknown flow is no worse than everything shut.
 * @throws on a mode that is none of the four: answers are checked before they come here
 */
export function chargingAirChanges(model: PhysicsModel, supply: AirSupply): AirChangesPerHour {
  const closed = model.closedAch as AirChangesPerHour;
  const volume = supply.volumeM3 as CubicMetres;
  switch (supply.mode) {
    case 'measured': return supply.measuredAch as AirChangesPerHour;
    case 'mechanical': return atLeast(closed, airChangesOf(supply.flowM3PerHour as CubicMetresPerHour, volume));
    case 'openings': return atLeast(closed, airChangesOf(throughOpening(model, supply), volume));
    case 'closed': return closed;
    default: throw new Error(`no such source of air: ${supply.mode}`);
  }
}

function throughOpening(model: PhysicsModel, supply: AirSupply): CubicMetresPerHour {
  const flow = singleSidedFlow(supply.openingM2 as SquareMetres, supply.openingHeightM as Metres, model.windSpeed as MetresPerSecond, model.tempDiff as Kelvin);
  return (flow * 3600) as CubicMetresPerHour;
}

function atLeast(floor: AirChangesPerHour, value: AirChangesPerHour): AirChangesPerHour { return value > floor ? value : floor; }
