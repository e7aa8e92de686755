import { currentContent } from '@/lib/content/editions';
import { airEstimate, volumeM3 } from '@/lib/places/air-estimate';
import { partsOf } from '@/lib/places/area-fields';
import type { Area } from '@/lib/places/place';
import { type Units, unitOf, writeMeasure } from '@/lib/places/typed-measure';
import { AIR_WORDS, AREA_USE_WORDS, DETECTOR_WORDS, FUEL_WORDS, SURFACE_WORDS } from '@/lib/places/words';
import { durationWords } from '@/lib/wording/measures';
import { rounded } from '@/lib/wording/numbers';

interface AreaFactsProps { readonly area: Area; readonly units: Units }

/** What is known of an area; what its use asks and nobody knows says so. */
export function AreaFacts({ area, units }: AreaFactsProps) {
  const parts = partsOf(area.use, area.outdoors);
  const shown = factsOf(area, units).filter(({ part }) => part === null || parts.includes(part));
  return <dl className="facts">{shown.map(({ name, value }) => <div key={name}><dt>{name}</dt><dd>{value ?? <span className="muted">not known</span>}</dd></div>)}</dl>;
}

interface AreaFact { readonly part: ReturnType<typeof partsOf>[number] | null; readonly name: string; readonly value: string | null }

function factsOf(area: Area, units: Units): readonly AreaFact[] {
  const length = (field: 'personDistanceM' | 'combustibleDistanceM' | 'clearHeightM'): string | null => (area[field] === null ? null : `${writeMeasure(field, area[field], units)} ${unitOf('length', units)}`);
  return [
    { part: null, name: 'Used for', value: `${AREA_USE_WORDS[area.use]}${area.outdoors ? ', outdoors' : ''}` },
    { part: 'size', name: 'Size', value: sizeWords(area, units) },
    { part: 'air', name: 'Air', value: area.airMode === null ? null : AIR_WORDS[area.airMode] },
    { part: 'air', name: 'Air changes an hour', value: airWords(area) },
    { part: 'surface', name: 'Packs stand on', value: area.surface === null ? null : SURFACE_WORDS[area.surface] },
    { part: 'distances', name: 'To what could burn', value: length('combustibleDistanceM') },
    { part: 'distances', name: 'To the shelf or ceiling above', value: length('clearHeightM') },
    { part: 'distances', name: 'To the nearest person', value: length('personDistanceM') },
    { part: 'fuel', name: 'What could burn in the room', value: area.fuelLoad === null ? null : FUEL_WORDS[area.fuelLoad] },
    { part: 'detectors', name: 'Smoke alarm', value: area.detectors === null ? null : DETECTOR_WORDS[area.detectors] },
    { part: 'people', name: 'People present', value: area.peoplePresent === null ? null : String(area.peoplePresent) },
    { part: 'leaving', name: 'Ways out', value: area.exits === null ? null : String(area.exits) },
    { part: 'leaving', name: 'Until everybody is out', value: area.evacuationS === null ? null : durationWords(area.evacuationS) },
    ...(area.notes === null ? [] : [{ part: null, name: 'Notes', value: area.notes }]),
  ];
}

function sizeWords(area: Area, units: Units): string | null {
  const { lengthM, widthM, heightM } = area;
  if (lengthM === null && widthM === null && heightM === null) return null;
  const sides = (['lengthM', 'widthM', 'heightM'] as const).map((field) => (area[field] === null ? 'not known' : writeMeasure(field, area[field], units)));
  const volume = volumeM3(area);
  return `${sides.join(' × ')} ${unitOf('length', units)}${volume === null ? '' : `, about ${rounded(volume)} m³`}`;
}

function airWords(area: Area): string | null {
  const air = airEstimate(currentContent, area);
  if (air === null) return null;
  if (air.low === air.high) return `${rounded(air.mid)}, from ${air.from}`;
  return `about ${rounded(air.mid)} (between ${rounded(air.low)} and ${rounded(air.high)}): ${air.from}`;
}
