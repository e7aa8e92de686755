import type { AlikeConditions } from '@/lib/content/model';
import { ok, refuse, type Result } from '@/lib/units/quantity';
import { toMeterResolution } from './meter-resolution';

/** Inner resistance of one pack at one check, with the conditions it depends on; null when not noted. */
export interface ResistanceReading {
  /** above 0 */
  readonly milliohms: number;
  /** of the pack, °C */
  readonly temperature: number | null;
  /** mean of its cells at rest, V */
  readonly cellVoltage: number | null;
}

/**
 * Resistance now over resistance at the first check. Compared only when the pack was about as warm and about
 * as full both times, because a cold or empty pack shows more; how close is the content's judgement.
 * @returns ratio, above 0, to a millionth; refused with the reason when the conditions are unlike or not known
 */
export function resistanceRatio(now: ResistanceReading, first: ResistanceReading, alike: AlikeConditions): Result<number> {
  if (!(now.milliohms > 0 && first.milliohms > 0)) return refuse('a resistance must be above 0 milliohms');
  const unlike = unlikeness('temperature', now.temperature, first.temperature, alike.temperature)
    ?? unlikeness('cell voltage', now.cellVoltage, first.cellVoltage, alike.cellVoltage);
  return unlike === null ? ok(toMeterResolution(now.milliohms / first.milliohms)) : refuse(unlike);
}

function unlikeness(what: string, now: number | null, first: number | null, within: AlikeConditions['temperature']): string | null {
  if (now === null || first === null) return `resistance not compared: ${what} was not noted both times`;
  if (toMeterResolution(Math.abs(now - first)) <= within.value) return null;
  return `resistance not compared: ${what} differs by more than ${within.value} ${within.unit} from the first check`;
}
