import type { GramsPerMole, Litres, Milligrams, Seconds, WattHours } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { massOfGas } from './ppm';

/** What a burning watt-hour gives: HF in mg/Wh, gas in L/Wh, and the share of CO in that gas. */
export interface GasYields { readonly hfYield: number; readonly gasVolume: number; readonly coFraction: number }

/**
 * How long the release of n packs lasts: τ = releaseDuration + (n − 1) · packToPackTime, because packs
 * catch one after another (amendment A20; both times are our judgement).
 * @param packs whole, 1 or more
 */
export function releaseTime(model: PhysicsModel, packs: number): Seconds {
  return (model.releaseDuration.mid + (packs - 1) * model.packToPackTime.mid) as Seconds;
}

/**
 * Hydrogen fluoride given off, yield · energy.
 * Source: Larsson et al. 2017, 20 to 200 mg per Wh of nominal energy (REFERENCES A.1, READ-P).
 */
export function hfMass(yields: GasYields, energy: WattHours): Milligrams {
  return (yields.hfYield * energy) as Milligrams;
}

/** All vent gas, at 25 °C: yield · energy. The yield is our judgement (REFERENCES A.1). */
export function ventGas(yields: GasYields, energy: WattHours): Litres {
  return (yields.gasVolume * energy) as Litres;
}

/** Carbon monoxide given off: its share of the vent gas, as mass. */
export function coMass(model: PhysicsModel, yields: GasYields, energy: WattHours): Milligrams {
  return massOfGas((ventGas(yields, energy) * yields.coFraction) as Litres, model.molarMassCO as GramsPerMole, model.molarVolume);
}
