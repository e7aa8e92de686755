import { labelOf } from '@/lib/forms/choices';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { CALLED, CONTACTED, DOINGS, KINDS, YES_NO } from './choices';
import { FACT_SCHEMAS, type FactName, type Facts, type PackOfIncident } from './facts';

/** What a reader needs besides the facts: names of places, and how dates are written. */
export interface FactNames {
  readonly dates: DateStyle;
  /** by id of a site or an area */
  readonly places: ReadonlyMap<string, string>;
}

const NOTHING = 'Nothing written';

/** One fact in words. */
export function sayFact<Name extends FactName>(name: Name, facts: Pick<Facts, Name>, names: FactNames): string {
  return SAYINGS[name](facts[name], names);
}

/** A fact out of a correction in words; one of another shape is shown as it is kept. */
export function sayCorrected(name: FactName, value: unknown, names: FactNames): string {
  const parsed = FACT_SCHEMAS[name].safeParse(value);
  return parsed.success ? sayFact(name, { [name]: parsed.data } as Pick<Facts, FactName>, names) : JSON.stringify(value);
}

const SAYINGS: { readonly [Name in FactName]: (value: Facts[Name], names: FactNames) => string } = {
  called: (ids) => ids.map((id) => labelOf(CALLED, id)).join(', '),
  hurt: (id) => labelOf(YES_NO, id),
  breathed: (id) => labelOf(YES_NO, id),
  kinds: (ids) => ids.map((id) => labelOf(KINDS, id)).join(', '),
  packs: sayPacks,
  when: ({ at, known }, { dates }) => `${known ? '' : 'About '}${momentWords(new Date(at), dates)}`,
  where: ({ siteId, areaId, place }, { places }) => {
    const named = [siteId, areaId].flatMap((id) => (id === null ? [] : [places.get(id) ?? 'a place that is no longer kept']));
    return [...named, ...(place === null ? [] : [place])].join(', ');
  },
  doing: (id) => labelOf(DOINGS, id),
  whatHappened: (text) => text ?? NOTHING,
  firstAid: (text) => text ?? NOTHING,
  whatWasDone: (text) => text ?? NOTHING,
  contacted: (ids) => (ids.length === 0 ? 'Nobody yet' : ids.map((id) => labelOf(CONTACTED, id)).join(', ')),
};

function sayPacks(packs: readonly PackOfIncident[]): string {
  const labels = (part: PackOfIncident['part']) => packs.filter((pack) => pack.part === part).map(({ label }) => label).join(', ');
  const groups = [labels('involved'), suffixed(labels('nearby'), 'only lay near'), suffixed(labels('not-sure'), 'perhaps')].filter((words) => words !== '');
  return groups.length === 0 ? 'None' : groups.join('; ');
}

function suffixed(labels: string, note: string): string {
  return labels === '' ? '' : `${labels} (${note})`;
}
