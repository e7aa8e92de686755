import { type Kelvin, ok, refuse, type Result } from '@/lib/units/quantity';
import type { LimitsOfPack } from './limits-of-pack';
import { toMeterResolution } from './meter-resolution';
import { figureOfRule } from './rule-figure';

/** Two readings of one thermometer, °C, and the hours since the pack was flown; null when nobody knows. */
export interface WarmthReading { readonly pack: number; readonly room: number; readonly hoursSinceUse: number | null }

/**
 * How much warmer a pack is than its room, at rest: pack − room. A pack that has just flown is warm for a
 * good reason, so there is no figure until it has rested as long as the rule `not-cooled` says; whether it is
 * getting warmer, or too hot for any use, is asked of every pack. Not known when it flew counts as at rest.
 * @returns K, any sign, to a millionth; refused while the pack still rests
 */
export function warmthAtRest({ rules }: Pick<LimitsOfPack, 'rules'>, { pack, room, hoursSinceUse }: WarmthReading): Result<Kelvin> {
  const rest = figureOfRule(rules, 'not-cooled');
  if (hoursSinceUse !== null && hoursSinceUse < rest) {
    return refuse('just used: warmth at rest shows only once it has rested; measure again then');
  }
  return ok(toMeterResolution(pack - room) as Kelvin);
}
