import type { CsvColumn } from '@/lib/csv/write-csv';
import type { Area, Site } from './place';
import { AIR_WORDS, AREA_USE_WORDS, DETECTOR_WORDS, FUEL_WORDS, SITE_KIND_WORDS, SURFACE_WORDS } from './words';

/** A line of the table: a site with one of its areas, or a site without any. */
export interface PlaceLine { readonly site: Site; readonly area: Area | null }

export function placeLines(sites: readonly Site[]): readonly PlaceLine[] {
  return sites.flatMap((site): readonly PlaceLine[] => (site.areas.length === 0 ? [{ site, area: null }] : site.areas.map((area) => ({ site, area }))));
}

const ofArea = (head: string, cell: (area: Area) => string | number | null): CsvColumn<PlaceLine> => ({ head, cell: ({ area }) => (area === null ? null : cell(area)) });
const worded = <Word extends string>(words: Readonly<Record<Word, string>>, word: Word | null): string | null => (word === null ? null : words[word]);

/** Places as a table, lengths in metres as they are kept. */
export const PLACE_COLUMNS: readonly CsvColumn<PlaceLine>[] = [
  { head: 'Place', cell: ({ site }) => site.name },
  { head: 'Whose', cell: ({ site }) => SITE_KIND_WORDS[site.kind] },
  { head: 'Address', cell: ({ site }) => site.address },
  { head: 'Number in a fire', cell: ({ site }) => site.emergencyNumber },
  { head: 'Meeting place', cell: ({ site }) => site.meetingPlace },
  ofArea('Area', ({ name }) => name),
  ofArea('Used for', ({ use }) => AREA_USE_WORDS[use]),
  ofArea('Outdoors', ({ outdoors }) => (outdoors ? 'yes' : 'no')),
  ofArea('Length, m', ({ lengthM }) => lengthM),
  ofArea('Width, m', ({ widthM }) => widthM),
  ofArea('Height, m', ({ heightM }) => heightM),
  ofArea('Air', ({ airMode }) => worded(AIR_WORDS, airMode)),
  ofArea('Air changes an hour', ({ airChangesPerHour }) => airChangesPerHour),
  ofArea('Ways out', ({ exits }) => exits),
  ofArea('Time until everybody is out, s', ({ evacuationS }) => evacuationS),
  ofArea('People', ({ peoplePresent }) => peoplePresent),
  ofArea('Surface', ({ surface }) => worded(SURFACE_WORDS, surface)),
  ofArea('Detectors', ({ detectors }) => worded(DETECTOR_WORDS, detectors)),
  ofArea('What could burn', ({ fuelLoad }) => worded(FUEL_WORDS, fuelLoad)),
];
