import { distanceScene } from '@/lib/charts/distance-bars';
import { roomPlanScene } from '@/lib/charts/room-plan';
import { lengthWords } from '@/lib/wording/lengths';
import { durationWords } from '@/lib/wording/measures';
import { type Block, heading, type PaperSection, text } from '../paper';
import type { EventAreaFact, EventFacts } from './facts';
import { AREA_WORDS, linesOf, said } from './said';

/** An area with the letter by which drawing and words find one another. */
interface Lettered { readonly letter: string; readonly area: EventAreaFact }

/** The places: a drawing to scale of what is measured, the distances, and each area in words. */
export function roomSection(facts: EventFacts): PaperSection {
  const { site } = facts;
  const lettered = site.areas.map((area, index) => ({ letter: String.fromCharCode(65 + (index % 26)), area }));
  return { id: 'room', title: 'The room: charging, store, outdoor spot, ways out, air', blocks: [
    text(`${site.describedBy === null ? 'Described by the school.' : `Described by the venue: ${site.describedBy}.`} What nobody knows is neither drawn nor taken for something.`, 'quiet'),
    ...plan(lettered, facts), ...missingUses(site.areas),
    linesOf(facts.venue),
    ...lettered.flatMap((one) => areaBlocks(one, facts)),
    ...(site.notes === null ? [] : [text(`Said about the place: ${site.notes}`)]),
  ] };
}

type Sized = EventAreaFact & { readonly lengthM: number; readonly widthM: number };

function isSized(area: EventAreaFact): area is Sized {
  return !area.outdoors && area.lengthM !== null && area.widthM !== null && area.lengthM > 0 && area.widthM > 0;
}

function plan(lettered: readonly Lettered[], { units }: EventFacts): readonly Block[] {
  const rooms = lettered.flatMap(({ letter, area }) => (isSized(area) ? [{ letter, use: AREA_WORDS[area.use], length: area.lengthM, width: area.widthM }] : []));
  const without = lettered.filter(({ area }) => !isSized(area)).map(({ letter, area }) => `${letter} ${area.name} (${area.outdoors ? 'outdoors' : 'size not known'})`);
  const note = without.length === 0 ? '' : ` Not drawn: ${without.join('; ')}.`;
  if (rooms.length === 0) return [text(`No room is drawn, because no size is known.${note}`)];
  return [{ kind: 'figure', scene: roomPlanScene(rooms, units), caption: `Walls only: what stands where in a room is marked by hand on the copy that hangs there, with table, store, ways out, call point and switch.${note}` }];
}

/** Places that a venue needs and nobody described. */
function missingUses(areas: readonly EventAreaFact[]): readonly Block[] {
  const missing = (['charging', 'storage', 'arena', 'isolation'] as const).filter((use) => !areas.some((area) => area.use === use));
  return missing.length === 0 ? [] : [text(`Nobody described: ${missing.map((use) => AREA_WORDS[use]).join('; ')}.`, 'presses')];
}

function areaBlocks({ letter, area }: Lettered, facts: EventFacts): readonly Block[] {
  return [heading(`${letter} ${area.name}: ${AREA_WORDS[area.use]}${area.outdoors ? ', outdoors' : ''}`), { kind: 'facts', columns: 2, rows: rowsOf(area, facts) }, ...distances(area, facts)];
}

function rowsOf(area: EventAreaFact, { units }: EventFacts): readonly { readonly name: string; readonly value: string }[] {
  const length = (value: number | null): string => (value === null ? said(null) : lengthWords(value, units));
  const size = area.lengthM === null && area.widthM === null && area.heightM === null ? said(null) : `${length(area.lengthM)} by ${length(area.widthM)}, ${length(area.heightM)} high`;
  const indoors = [
    { name: 'Size', value: size }, { name: 'Openings', value: said(area.openings) }, { name: 'Air', value: said(area.air) },
    { name: 'Smoke detectors', value: said(area.detectors) },
  ];
  const leaving = [{ name: 'Ways out', value: said(area.exits) }, { name: 'Until everybody is out', value: area.evacuationS === null ? said(null) : durationWords(area.evacuationS) }];
  const people = [
    ...(area.outdoors ? [] : leaving),
    { name: 'People there', value: said(area.peoplePresent) }, { name: 'What could burn', value: said(area.fuelLoad) },
  ];
  const near = [{ name: 'Nearest person', value: length(area.personDistanceM) }, { name: 'Nearest thing that burns', value: length(area.combustibleDistanceM) }];
  const above = [{ name: 'Free above the packs', value: length(area.clearHeightM) }];
  const rows = { charging: [...people, { name: 'Surface under packs', value: said(area.surface) }, ...near, ...above], storage: [...people, ...near, ...above], arena: people, isolation: near, disposal: [] }[area.use];
  const notes = area.notes === null ? [] : [{ name: 'Notes', value: area.notes }];
  return [...(area.outdoors || area.use === 'isolation' || area.use === 'disposal' ? [] : indoors), ...rows, ...notes];
}

/** Distances from the packs where they are charged, as far as somebody measured them. */
function distances(area: EventAreaFact, { units }: EventFacts): readonly Block[] {
  if (area.use !== 'charging') return [];
  const known = [['nearest person', area.personDistanceM], ['nearest thing that burns', area.combustibleDistanceM], ['free above', area.clearHeightM]].flatMap(([words, length]) => (typeof words === 'string' && typeof length === 'number' ? [{ words, length }] : []));
  return known.length === 0 ? [] : [{ kind: 'figure', scene: distanceScene(known, units), caption: `${area.name}. The dark block is a pack on charge, the ring what is near it.` }];
}
