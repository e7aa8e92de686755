import type { PackLimits } from '@/lib/content/model';
import type { Volts } from '@/lib/units/quantity';

/** Where a resting cell stands between empty and full. */
export type ChargeBand = 'too low' | 'low' | 'below storage' | 'storage' | 'above storage' | 'full' | 'too high';

/**
 * Names the charge of a resting cell with the limits in force: storage charge is the window of the content,
 * full its full voltage and above, low and too low or too high the limits of the pack check. Each limit
 * counts as its rule says, so a cell exactly at 3.3 V is not low.
 * @param volts of one cell at rest
 * @throws when the limits lack one of the voltage rules: a fault of the content
 */
export function chargeBand(limits: PackLimits, volts: Volts): ChargeBand {
  if (volts < limitOf(limits, 'cell-too-low')) return 'too low';
  if (volts < limitOf(limits, 'cell-low')) return 'low';
  if (volts > limitOf(limits, 'cell-too-high')) return 'too high';
  if (volts >= limits.full.value) return 'full';
  if (volts > limits.storageCharge.high) return 'above storage';
  return volts >= limits.storageCharge.low ? 'storage' : 'below storage';
}

function limitOf(limits: PackLimits, id: string): number {
  const value = limits.rules.find((rule) => rule.id === id)?.value;
  if (typeof value !== 'number') throw new Error(`the pack limits have no figure for ${id}`);
  return value;
}
