import type { AmpereHours, WattHours } from '@/lib/units/quantity';
import type { BatterySummary } from '@/lib/core/result';
import { airClass } from './air-carriage';
import { balancePins, chargeCurrentAt1C } from './charging';

/** The packs of a team: the figures of one pack and how many there are. */
export interface TeamPacks {
  readonly cells: number;
  readonly capacityMah: number;
  /** energy of one pack, already the printed figure where there is one */
  readonly packWh: number;
  readonly packs: number;
  /** most packs in one store */
  readonly packsStored: number;
}

/** The battery figures of the report: total energy counts all packs, stored energy those in one store (amendment A44). */
export function batterySummary(team: TeamPacks): BatterySummary {
  return {
    packWh: team.packWh,
    airClass: airClass(team.packWh as WattHours),
    totalWh: team.packs * team.packWh,
    storedWh: team.packsStored * team.packWh,
    currentAt1C: chargeCurrentAt1C((team.capacityMah / 1000) as AmpereHours),
    balancePins: balancePins(team.cells),
  };
}
