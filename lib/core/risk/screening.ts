import type { Area } from '@/lib/content/model';
import { numberInput, type Venue } from '@/lib/core/answers/venue';
import { heatCase } from '@/lib/core/heat/screening';
import type { PhysicsModel } from '@/lib/core/physics-model';
import type { HeatScreening, SmokeCase, SmokeScreening } from '@/lib/core/result';
import { smokeCase } from '@/lib/core/smoke/screening';
import { areaAir } from './area-air';
import { packsThatBurn } from './pack-counts';

/**
 * Smoke shown for this venue (amendment A37): one pack, one lot and all packs on the table in the charging
 * room with its near field, one lot in the store, the packs that burn in a vehicle. A display: the
 * branches of a scenario may take other cases.
 */
export function smokeScreening(venue: Venue, model: PhysicsModel): SmokeScreening {
  const near = numberInput(venue, 'peopleNear') > 0;
  const of = (area: Area, packs: number, nearHere: boolean, foundLater: boolean): SmokeCase =>
    smokeCase(model, { area, packs, packEnergyWh: numberInput(venue, 'packWh'), ...areaAir(venue, model, area), near: nearHere, foundLater });
  return {
    one: of('charging', 1, near, false),
    lot: of('charging', packsThatBurn(venue, 'lot', 'charging'), near, false),
    allOnTable: of('charging', packsThatBurn(venue, 'all', 'charging'), near, false),
    storeLot: of('storage', packsThatBurn(venue, 'lot', 'storage'), false, true),
    vehicle: of('vehicle', packsThatBurn(venue, 'transit', 'vehicle'), false, false),
  };
}

export function heatScreening(venue: Venue, model: PhysicsModel): HeatScreening {
  const packWh = numberInput(venue, 'packWh');
  return { one: heatCase(model, 1, packWh), lot: heatCase(model, packsThatBurn(venue, 'lot', 'charging'), packWh) };
}
