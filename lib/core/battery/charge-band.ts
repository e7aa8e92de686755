import type { Volts } from '@/lib/units/quantity';
import type { LimitsOfPack } from './limits-of-pack';
import { figureOfRule } from './rule-figure';

/** Where a resting cell stands between empty and full. */
export type ChargeBand = 'too low' | 'low' | 'below storage' | 'storage' | 'above storage' | 'full' | 'too high';

/**
 * Names the charge of a resting cell with the limits in force for its pack (`limitsOfPack`): storage charge is
 * the window of the content, full its full voltage and above, low and too low or too high the limits of the
 * pack check. Each limit counts as its rule says, so a cell exactly at 3.3 V is not low.
 * @param volts of one cell at rest
 * @throws when the limits lack one of the voltage rules: a fault of the content
 */
export function chargeBand({ rules, full, storageCharge }: LimitsOfPack, volts: Volts): ChargeBand {
  if (volts < figureOfRule(rules, 'cell-too-low')) return 'too low';
  if (volts < figureOfRule(rules, 'cell-low')) return 'low';
  if (volts > figureOfRule(rules, 'cell-too-high')) return 'too high';
  if (volts >= full.value) return 'full';
  if (volts > storageCharge.high) return 'above storage';
  return volts >= storageCharge.low ? 'storage' : 'below storage';
}
