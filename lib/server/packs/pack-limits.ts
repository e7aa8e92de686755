import 'server-only';
import { cache } from 'react';
import { currentContent } from '@/lib/content/editions';
import type { PackLimits } from '@/lib/content/model';
import { getSchoolRules } from '@/lib/db/people/school-rules';
import { schoolScope } from '@/lib/db/scope';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import { limitsInForce, type SchoolPackLimits, type SchoolRules } from '@/lib/packs/school-rules';
import { database } from '../database';
import type { CurrentSchool } from '../people/current-school';

/** The pack limits of the content, and the edition they are of: for words and places. Figures are the school's own. */
export const PACK_LIMITS: PackLimits = currentContent.packLimits;
export const PACK_CONTENT_VERSION = currentContent.version;

const rulesOfId = cache((schoolId: string): Promise<SchoolRules> => getSchoolRules(database(), schoolScope({ schoolId })));
const limitsOfId = cache(async (schoolId: string): Promise<SchoolPackLimits> => limitsInForce(PACK_LIMITS, await rulesOfId(schoolId)));

/** Returns what somebody's school has set for itself. */
export function schoolRulesOf(actor: { readonly schoolId: string }): Promise<SchoolRules> {
  return rulesOfId(actor.schoolId);
}

/** Returns the limits somebody's school holds its packs to; looked up once per request. */
export function packLimitsOf(actor: { readonly schoolId: string }): Promise<SchoolPackLimits> {
  return limitsOfId(actor.schoolId);
}

/** What a school's thermometers show. */
export function temperatureUnitOf({ units }: Pick<CurrentSchool, 'units'>): TemperatureUnit {
  return units === 'us' ? '°F' : '°C';
}
