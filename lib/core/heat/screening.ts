import type { KilowattsPerSquareMetre, Metres } from '@/lib/units/quantity';
import type { LevelName, PhysicsModel } from '@/lib/core/physics-model';
import type { HeatCase, HeatLevel } from '@/lib/core/result';
import { flameHeight } from './flame-height';
import { heatRelease } from './heat-release';
import { distanceOfFlux } from './point-source';

/**
 * What the report shows of the heat of one fire: heat release and radiant fraction at their low, middle and
 * high together, the base of the flame always at its middle (amendment A38).
 * @param packs whole, 1 or more
 * @param packEnergyWh 0 or more
 */
export function heatCase(model: PhysicsModel, packs: number, packEnergyWh: number): HeatCase {
  const level = (name: LevelName): HeatLevel => {
    const heat = heatRelease(model, packs, packEnergyWh, model.peakHeatRelease[name]);
    const distance = (flux: number): Metres => distanceOfFlux(heat, model.radiantFraction[name], flux as KilowattsPerSquareMetre);
    return {
      Q_kW: heat,
      flameHeight: flameHeight(heat, model.flameBase.mid as Metres),
      ignitionDistance: distance(model.woodIgnition),
      painDistance: distance(model.painFlux),
    };
  };
  return { low: level('low'), mid: level('mid'), high: level('high') };
}
