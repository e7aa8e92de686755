import type { Area } from '@/lib/content/model';
import { numberInput, type Venue, wordInput } from '@/lib/core/answers/venue';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { chargingAirChanges } from '@/lib/core/smoke/air-changes';

export interface AreaAir {
  readonly volumeM3: number;
  readonly airChanges: number;
  readonly evacuationS: number;
  /** people who share that air where the many-people rule applies, else 0 (amendment A19) */
  readonly sharing: number;
}

/**
 * Air of an area: volume, air changes and the time people stay. Outdoors stands as a box of moving air,
 * whatever air was typed in (amendment A36). Since the second edition that box is no smaller than the room
 * whose place it takes: bringing a store out of a large hall must not seem to thicken its smoke.
 */
export function areaAir(venue: Venue, model: PhysicsModel, area: Area): AreaAir {
  const outdoors = (room: string) => ({ volumeM3: outdoorVolume(venue, model, room), airChanges: model.outdoorAch });
  switch (area) {
    case 'charging': {
      const air = numberInput(venue, 'chargingOutdoor') === 1 ? outdoors('chargingVolume') : indoorCharging(venue, model);
      return { ...air, evacuationS: numberInput(venue, 'chargingEvac'), sharing: numberInput(venue, 'peopleRoom') };
    }
    case 'storage': {
      const air = numberInput(venue, 'storageOutdoor') === 1 ? outdoors('storageVolume') : { volumeM3: numberInput(venue, 'storageVolume'), airChanges: numberInput(venue, 'storageAch') };
      return { ...air, evacuationS: numberInput(venue, 'storageEvac'), sharing: 0 };
    }
    case 'arena': return { volumeM3: numberInput(venue, 'arenaVolume'), airChanges: numberInput(venue, 'arenaAch'), evacuationS: numberInput(venue, 'arenaEvac'), sharing: numberInput(venue, 'spectators') };
    case 'vehicle': return { volumeM3: numberInput(venue, 'vehicleVolume'), airChanges: numberInput(venue, 'vehicleAch'), evacuationS: numberInput(venue, 'vehicleEvac'), sharing: 0 };
  }
}

const outdoorVolume = (venue: Venue, model: PhysicsModel, room: string): number =>
  (model.outdoorsAtLeastRoom ? Math.max(model.outdoorVolume, numberInput(venue, room)) : model.outdoorVolume);

function indoorCharging(venue: Venue, model: PhysicsModel) {
  const volumeM3 = numberInput(venue, 'chargingVolume');
  const airChanges = chargingAirChanges(model, {
    mode: wordInput(venue, 'airMode'),
    volumeM3,
    measuredAch: numberInput(venue, 'chargingAch'),
    flowM3PerHour: numberInput(venue, 'chargingFlow'),
    openingM2: numberInput(venue, 'chargingOpening'),
    openingHeightM: numberInput(venue, 'chargingOpeningHeight'),
  });
  return { volumeM3, airChanges };
}
