import 'server-only';
import type { Content } from '@/lib/content/model';
import type { EventFacts } from '@/lib/papers/event/facts';
import { airEstimate } from '@/lib/places/air-estimate';
import type { Area } from '@/lib/places/place';
import { AIR_WORDS, DETECTOR_WORDS, FUEL_WORDS, SURFACE_WORDS } from '@/lib/places/words';
import { rounded } from '@/lib/wording/numbers';

/** A part of a site in the words of a paper; what nobody knows stays null. */
export function areaFact(content: Content, area: Area): EventFacts['site']['areas'][number] {
  const { use, name, outdoors, lengthM, widthM, heightM, openings, exits, evacuationS, surface, detectors, fuelLoad, peoplePresent, personDistanceM, combustibleDistanceM, clearHeightM, notes } = area;
  return {
    use, name, outdoors, lengthM, widthM, heightM, openings, air: airWords(content, area), exits, evacuationS,
    surface: surface === null ? null : SURFACE_WORDS[surface], detectors: detectors === null ? null : DETECTOR_WORDS[detectors], fuelLoad: fuelLoad === null ? null : FUEL_WORDS[fuelLoad],
    peoplePresent, personDistanceM, combustibleDistanceM, clearHeightM, notes,
  };
}

function airWords(content: Content, area: Area): string | null {
  if (area.outdoors) return 'outdoors';
  const air = airEstimate(content, area);
  if (air === null) return area.airMode === null ? null : AIR_WORDS[area.airMode];
  const figure = air.low === air.high ? rounded(air.mid) : `about ${rounded(air.mid)}, between ${rounded(air.low)} and ${rounded(air.high)},`;
  return `renewed ${figure} times an hour, from ${air.from}`;
}
