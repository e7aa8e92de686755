import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';
import type { SeverityClass } from '@/lib/content/model';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { aeglAt } from './aegl-curve';
import { aeglLevel } from './aegl-level';

/** Dose of CO from which sensitive people may no longer save themselves (ISO 13571, REFERENCES B.4, MEM H). */
const CO_DOSE_LIMIT = 0.3;
/** CO is worth a class from this share of AEGL-2 (smokeRule, our judgement). */
const CO_NOTICE_SHARE = 0.5;

/**
 * Class of an HF exposure: from AEGL-1 2, from IDLH 3, from AEGL-2 4, from AEGL-3 5, the highest reached
 * (for long stays AEGL-2 falls below IDLH, amendment A17).
 * @param ppm highest concentration breathed, 0 or more
 * @param stay length of the exposure, 0 or more
 */
export function hfClass(model: PhysicsModel, ppm: PartsPerMillion, stay: Minutes): SeverityClass {
  const level = aeglLevel(model, 'HF', ppm, stay);
  if (level === 3) return 5;
  if (level === 2) return 4;
  if (ppm >= model.idlh.HF) return 3;
  return level === 1 ? 2 : 1;
}

/**
 * Class of a CO exposure: from half of AEGL-2 2, from AEGL-2 3, from IDLH or AEGL-3 4, and 5 when both
 * AEGL-3 and the dose limit are reached. The dose alone gives at least 4.
 * @param dose fractional effective dose over the stay, 0 or more
 */
export function coClass(model: PhysicsModel, ppm: PartsPerMillion, stay: Minutes, dose: number): SeverityClass {
  const level3 = aeglAt(model.aegl.CO['3'], stay);
  if (ppm >= level3 && dose >= CO_DOSE_LIMIT) return 5;
  if (dose >= CO_DOSE_LIMIT || ppm >= Math.min(model.idlh.CO, level3)) return 4;
  const level2 = aeglAt(model.aegl.CO['2'], stay);
  if (ppm >= level2) return 3;
  return ppm >= CO_NOTICE_SHARE * level2 ? 2 : 1;
}
