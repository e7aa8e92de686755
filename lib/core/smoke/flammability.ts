import type { CubicMetres, Litres } from '@/lib/units/quantity';

/**
 * Largest closed volume that a quantity of vent gas can fill to its lower flammability limit:
 * gas / limit. In anything smaller the mixture can burn; a sealed box is no safer than a vented one.
 * Source of the limit: DOT/FAA/TC-15/59, 10 vol % (REFERENCES A.1, READ-P abstract).
 * @param limitPercent lower flammability limit, volume per cent in air, above 0
 */
export function flammableBelow(gas: Litres, limitPercent: number): Litres {
  return (gas / (limitPercent / 100)) as Litres;
}

/** How near a whole room comes to the lower flammability limit: 1 is the limit. Even mixing, no loss. */
export function shareOfFlammableLimit(gas: Litres, room: CubicMetres, limitPercent: number): number {
  return flammableBelow(gas, limitPercent) / (room * 1000);
}
