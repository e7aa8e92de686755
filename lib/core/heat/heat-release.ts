import type { Kilowatts } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';

/**
 * Packs that burn at the same moment: of n packs that catch one after another the first are out before
 * the last begin (amendment A20, our judgement).
 * @param packs whole, 1 or more
 */
export function packsAtOnce(model: PhysicsModel, packs: number): number {
  return Math.min(packs, model.burningTogether.mid);
}

/**
 * Heat release of the packs that burn together: yield · energy · packs / 1000.
 * Source of the yield: Larsson et al. 2014, 110 to 490 W per Wh (REFERENCES A.2, MEM M).
 * @param heatYield W/Wh, 0 or more
 */
export function heatRelease(model: PhysicsModel, packs: number, packEnergyWh: number, heatYield: number): Kilowatts {
  return ((heatYield * packEnergyWh * packsAtOnce(model, packs)) / 1000) as Kilowatts;
}
