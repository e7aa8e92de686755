import type { PhysicsModel } from '@/lib/core/physics-model';
import { twoPieceLognormal } from '@/lib/core/statistics/two-piece-lognormal';

export interface Yields {
  /** mg/Wh */
  readonly hfYield: number;
  /** L/Wh */
  readonly gasVolume: number;
  /** L of CO in a litre of gas */
  readonly coFraction: number;
  /** W/Wh */
  readonly heatYield: number;
}

/**
 * All four yields at one burn strength: a fierce fire gives more of everything (amendment A13).
 * @param z standard normal, any finite number
 * @returns yields within the published ranges, whatever z
 */
export function yieldsAt(model: PhysicsModel, z: number): Yields {
  return {
    hfYield: twoPieceLognormal(model.hfYield, z),
    gasVolume: twoPieceLognormal(model.gasVolume, z),
    coFraction: twoPieceLognormal(model.coFraction, z),
    heatYield: twoPieceLognormal(model.peakHeatRelease, z),
  };
}
