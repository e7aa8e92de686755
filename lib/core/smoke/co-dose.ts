import type { PhysicsModel } from '@/lib/core/physics-model';

/**
 * Fractional effective dose of carbon monoxide: ∫ C dt / 35,000 ppm·min. A dose of 0.3 makes sensitive
 * people unable to save themselves.
 * Source: ISO 13571 as given in the NIST CFAST guide (REFERENCES B.4, READ-S; 0.3 MEM H), without its
 * factor for faster breathing: carbon dioxide of the smoke is not followed.
 * @param ppmMinutes ∫ C dt over the stay, 0 or more
 */
export function coDose(model: PhysicsModel, ppmMinutes: number): number {
  return ppmMinutes / model.coDoseDenominator;
}
