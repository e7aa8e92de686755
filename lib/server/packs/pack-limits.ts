import 'server-only';
import { currentContent } from '@/lib/content/editions';
import type { PackLimits } from '@/lib/content/model';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import type { CurrentSchool } from '../people/current-school';

/** The pack limits in force, and the edition they are of. */
export const PACK_LIMITS: PackLimits = currentContent.packLimits;
export const PACK_CONTENT_VERSION = currentContent.version;

/** What a school's thermometers show. */
export function temperatureUnitOf({ units }: Pick<CurrentSchool, 'units'>): TemperatureUnit {
  return units === 'us' ? '°F' : '°C';
}
