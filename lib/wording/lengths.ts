import type { Metres } from '@/lib/units/quantity';
import { inFeet } from '@/lib/units/us-customary';
import { exact } from './numbers';

/** What a school measures in. */
export type LengthUnits = 'metric' | 'us';

/** A length as somebody measured it, to a centimetre or a tenth of a foot: "8.25 m", "27.1 ft". For display only. */
export function lengthWords(length: number, units: LengthUnits): string {
  return units === 'us' ? `${exact(Number(inFeet(length as Metres).toFixed(1)))} ft` : `${exact(Number(length.toFixed(2)))} m`;
}
