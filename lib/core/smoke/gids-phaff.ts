import type { CubicMetresPerSecond, Kelvin, Metres, MetresPerSecond, SquareMetres } from '@/lib/units/quantity';

/**
 * Air that goes in and out through one opening of a room, by wind and warmth:
 * Q = ½ · A · √(0.001·u² + 0.0035·H·ΔT + 0.01).
 * Source: de Gids and Phaff 1982, as coded in an open building-physics library (REFERENCES H, READ-S).
 * Single-sided openings only; with openings on two sides a room gets more.
 * @param area of the opening, 0 or more
 * @param height of the opening, 0 or more
 * @param wind 10 m above ground, 0 or more
 * @param difference inside minus outside, 0 or more
 */
export function singleSidedFlow(area: SquareMetres, height: Metres, wind: MetresPerSecond, difference: Kelvin): CubicMetresPerSecond {
  return (0.5 * area * Math.sqrt(0.001 * wind ** 2 + 0.0035 * height * difference + 0.01)) as CubicMetresPerSecond;
}
