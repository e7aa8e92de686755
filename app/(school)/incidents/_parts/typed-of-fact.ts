import type { Typed } from '@/lib/forms/form-state';
import { localOfMoment } from '@/lib/forms/local-moment';
import type { FactName, Facts } from '@/lib/incidents/facts';

/** What stands in the fields of a fact that is to be corrected. */
export function typedOfFact(name: FactName, facts: Facts, timeZone: string): Typed {
  switch (name) {
    case 'packs': return { involvedTyped: labelsOf(facts, false), nearbyTyped: labelsOf(facts, true) };
    case 'when': return { when: localOfMoment(new Date(facts.when.at), timeZone), ...(facts.when.known ? {} : { guessed: 'yes' }) };
    case 'where': return typedOfPlace(facts.where);
    default: return { [name]: facts[name] ?? '' };
  }
}

function labelsOf({ packs }: Facts, nearby: boolean): string {
  return packs.filter(({ part }) => (part === 'nearby') === nearby).map(({ label }) => label).join(', ');
}

function typedOfPlace({ siteId, areaId, place }: Facts['where']): Typed {
  const where = siteId === null ? 'elsewhere' : areaId === null ? `site:${siteId}` : `area:${siteId}:${areaId}`;
  return { where, place: place ?? '' };
}
