import type { Kilowatts, Metres } from '@/lib/units/quantity';

/**
 * Mean height of a flame above its base: L = 0.235 · Q^(2/5) − 1.02 · D, never below 0.
 * Source: Heskestad, as in NUREG-1805 and SFPE (REFERENCES C, MEM H). The dimensionless form
 * L/D = 3.7·Q*^(2/5) − 1.02 gives 5 to 7 % less; it is not used here. Jets of a venting cell can reach
 * further for a moment.
 * @param heat 0 or more
 * @param base diameter of the burning base, 0 or more
 */
export function flameHeight(heat: Kilowatts, base: Metres): Metres {
  return Math.max(0, 0.235 * heat ** 0.4 - 1.02 * base) as Metres;
}
