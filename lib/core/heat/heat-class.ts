import type { Kilowatts, Metres } from '@/lib/units/quantity';
import type { SeverityClass } from '@/lib/content/model';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { flameHeight } from './flame-height';
import { heatRelease, packsAtOnce } from './heat-release';
import { pointSourceFlux } from './point-source';

interface Burning {
  /** packs that burn, whole, 1 or more */
  readonly packs: number;
  readonly packEnergyWh: number;
  /** W/Wh, 0 or more */
  readonly heatYield: number;
}
export interface BurnExposure extends Burning {
  /** usual distance of the nearest person, 0 or more */
  readonly personDistanceM: number;
}
export interface SpreadExposure extends Burning {
  readonly fuel: 'light' | 'ordinary' | 'heavy';
  /** to the nearest thing that burns; null where the area has no such input (arena, vehicle) */
  readonly combustibleDistanceM: number | null;
  /** free height above the packs; null where the area has no such input */
  readonly clearHeightM: number | null;
}

/** Closer than this counts as touching (heatRule, our judgement), m. */
const TOUCHING = 0.05;
const BASE_CLASS = { light: 2, ordinary: 3, heavy: 4 } as const;
const WITH_SPREAD = { 2: 3, 3: 4, 4: 5 } as const;

/**
 * Severity class of burns to the nearest person: within reach of flames and sparks 3 for one pack and 4
 * for several; outside it by radiation, with the middle radiant fraction (heatRule; amendment A38). Our
 * judgement on thresholds of REFERENCES C.2.
 * @returns 2 to 4: never below 2, because people reach in
 */
export function burnClass(model: PhysicsModel, exposure: BurnExposure): SeverityClass {
  const heat = heatRelease(model, exposure.packs, exposure.packEnergyWh, exposure.heatYield);
  const reach = Math.max(model.reachMin, middleFlame(model, heat));
  if (exposure.personDistanceM <= reach) return packsAtOnce(model, exposure.packs) === 1 ? 3 : 4;
  const flux = middleFlux(model, heat, exposure.personDistanceM);
  if (flux >= model.burnFlux) return 4;
  return flux >= model.painFlux ? 3 : 2;
}

/**
 * Severity class of a fire that spreads to the room: by what can burn there, one more when flame or
 * radiation reaches it. Arena and vehicle have no distances: only what can burn counts (amendment A34).
 * @returns 2 to 5
 */
export function spreadClass(model: PhysicsModel, exposure: SpreadExposure): SeverityClass {
  const base = BASE_CLASS[exposure.fuel];
  const heat = heatRelease(model, exposure.packs, exposure.packEnergyWh, exposure.heatYield);
  const besides = exposure.combustibleDistanceM !== null && ignites(model, heat, exposure.combustibleDistanceM);
  const above = exposure.clearHeightM !== null && middleFlame(model, heat) >= exposure.clearHeightM;
  return besides || above ? WITH_SPREAD[base] : base;
}

function ignites(model: PhysicsModel, heat: Kilowatts, distanceM: number): boolean {
  return distanceM <= TOUCHING || middleFlux(model, heat, distanceM) >= model.woodIgnition;
}

function middleFlame(model: PhysicsModel, heat: Kilowatts): number {
  return flameHeight(heat, model.flameBase.mid as Metres);
}

function middleFlux(model: PhysicsModel, heat: Kilowatts, distanceM: number): number {
  return pointSourceFlux(heat, model.radiantFraction.mid, distanceM as Metres);
}
