import type { DerivedName, SeverityClass } from '@/lib/content/model';
import { numberInput, stateOf, type Venue } from '@/lib/core/answers/venue';
import { type ConditionContext } from '@/lib/core/answers/condition';
import { circuitLoad } from '@/lib/core/electrical/load';
import type { PhysicsModel } from '@/lib/core/physics-model';
import type { ElectricalSummary } from '@/lib/core/result';
import { severityCase } from './severity';

export interface Derived {
  /** energy of all packs in the store, Wh (amendment A44) */
  readonly storedWh: number;
  /** load on the circuit divided by what it may carry for hours */
  readonly loadShare: number;
  /** class of the room air when one lot burns on the table, many-people rule included (amendment A35) */
  readonly chargingLotSmokeClass: SeverityClass;
}

export function electricalSummary(venue: Venue, model: PhysicsModel): ElectricalSummary {
  return circuitLoad(model, {
    chargers: numberInput(venue, 'chargers'),
    chargerWatts: numberInput(venue, 'chargerWatts'),
    otherWatts: numberInput(venue, 'otherWatts'),
    circuitAmps: numberInput(venue, 'circuitAmps'),
    mainsVolts: numberInput(venue, 'mainsVolts'),
  });
}

export function derivedOf(venue: Venue, model: PhysicsModel): Derived {
  const lot = severityCase(venue, model, { from: 'smoke', area: 'charging', packs: 'lot', near: false, foundLater: false });
  return {
    storedWh: numberInput(venue, 'packsStored') * numberInput(venue, 'packWh'),
    loadShare: electricalSummary(venue, model).loadShare,
    chargingLotSmokeClass: lot.classAt(0),
  };
}

/** What stop conditions look at; derived figures follow the states of the venue, so an action may clear a stop. */
export function conditionContext(venue: Venue, derived: Derived): ConditionContext {
  return {
    state: (control) => stateOf(venue, control),
    input: (id) => {
      const value = venue.inputs.get(id);
      if (value === undefined) throw new Error(`no input ${id}`);
      return value;
    },
    derived: (name: DerivedName) => derived[name],
  };
}
