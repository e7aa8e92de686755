import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { aeglAt } from './aegl-curve';

/** The gases of the smoke that are followed. */
export type Gas = 'HF' | 'CO';

/**
 * Highest guideline level reached by a steady exposure; a level is reached at or above its value.
 * Source: EPA and NRC tables (REFERENCES B.1, B.2); "at or above" is the content's rule. CO has no level 1.
 * @param ppm 0 or more
 * @param minutes 0 or more
 * @returns 0 when none is reached
 */
export function aeglLevel(model: PhysicsModel, gas: Gas, ppm: PartsPerMillion, minutes: Minutes): 0 | 1 | 2 | 3 {
  const curves = model.aegl[gas];
  if (ppm >= aeglAt(curves['3'], minutes)) return 3;
  if (ppm >= aeglAt(curves['2'], minutes)) return 2;
  return gas === 'HF' && ppm >= aeglAt(model.aegl.HF['1'], minutes) ? 1 : 0;
}
