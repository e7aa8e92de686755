import type { Kilowatts, KilowattsPerSquareMetre, Metres } from '@/lib/units/quantity';

/**
 * Radiation of a fire seen as a point: q = χ·Q / (4π·R²).
 * Source: NIST CFAST guide, radiation to a target (REFERENCES C, READ-P). Accurate far away, too much
 * within a few diameters, so on the safe side there.
 * @param radiantFraction χ, share of the heat that is radiated, 0 to 1
 * @param distance R, above 0; at 0 the result is infinite
 */
export function pointSourceFlux(heat: Kilowatts, radiantFraction: number, distance: Metres): KilowattsPerSquareMetre {
  return ((radiantFraction * heat) / (4 * Math.PI * distance ** 2)) as KilowattsPerSquareMetre;
}

/**
 * Distance at which the radiation of a fire has fallen to a given flux: R = √(χ·Q / (4π·q)), the inverse
 * of `pointSourceFlux`.
 * @param flux above 0
 */
export function distanceOfFlux(heat: Kilowatts, radiantFraction: number, flux: KilowattsPerSquareMetre): Metres {
  return Math.sqrt((radiantFraction * heat) / (4 * Math.PI * flux)) as Metres;
}
