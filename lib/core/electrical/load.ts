import type { PhysicsModel } from '@/lib/core/physics-model';
import type { ElectricalSummary } from '@/lib/core/result';

/** A circuit and what hangs on it while packs charge. */
export interface Circuit {
  readonly chargers: number;
  /** input of one charger, not what it gives to the pack */
  readonly chargerWatts: number;
  readonly otherWatts: number;
  /** rating of the fuse or breaker, above 0 */
  readonly circuitAmps: number;
  /** above 0 */
  readonly mainsVolts: number;
}

/**
 * Load on a circuit against what it may carry for hours: allowed = volts · amperes · continuousFactor.
 * Common practice, no source: 0.8 of the rating for a load of hours. Counts real power, so chargers with
 * a poor power factor load the circuit more than is shown.
 * @returns watts, and load divided by allowed (1 is the limit)
 */
export function circuitLoad(model: PhysicsModel, circuit: Circuit): ElectricalSummary {
  const loadWatts = circuit.chargers * circuit.chargerWatts + circuit.otherWatts;
  const allowedWatts = circuit.mainsVolts * circuit.circuitAmps * model.continuousFactor;
  return { loadWatts, allowedWatts, loadShare: loadWatts / allowedWatts };
}
