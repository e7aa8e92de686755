import type { Area, AreaDetails, Site, SiteDetails } from '@/lib/places/place';
import { AIR_MODES, AREA_USES, DETECTORS, FUEL_LOADS, SITE_KINDS, SURFACES } from '@/lib/places/place';
import type { Prisma } from '../generated/sqlite/client';

type SiteRow = Prisma.SiteGetPayload<{ include: { areas: true } }>;
type AreaRow = Prisma.AreaGetPayload<object>;

export function siteOfRow(row: SiteRow): Site {
  const { id, archivedAt, revision, areas } = row;
  return { ...siteColumns({ ...row, kind: one(SITE_KINDS, row.kind) }), id, archivedAt, revision, areas: areas.map(areaOfRow) };
}

export function areaOfRow(row: AreaRow): Area {
  const { id, siteId, archivedAt, revision } = row;
  const words = {
    use: one(AREA_USES, row.use),
    airMode: oneOrNull(AIR_MODES, row.airMode),
    surface: oneOrNull(SURFACES, row.surface),
    detectors: oneOrNull(DETECTORS, row.detectors),
    fuelLoad: oneOrNull(FUEL_LOADS, row.fuelLoad),
  };
  return { ...areaColumns({ ...row, ...words }), id, siteId, archivedAt, revision };
}

/** The details of a site as columns, without anything else the caller's object may hold. */
export function siteColumns({ name, kind, address, emergencyNumber, meetingPlace, secondMeetingPlace, keyHolder, keyHolderPhone, notes }: SiteDetails) {
  return { name, kind, address, emergencyNumber, meetingPlace, secondMeetingPlace, keyHolder, keyHolderPhone, notes };
}

export function areaColumns(area: AreaDetails) {
  const { use, name, outdoors, lengthM, widthM, heightM, airMode, airChangesPerHour, airFlowM3PerH, openingWidthM, openingHeightM, openings, exits, surface, detectors, fuelLoad, peoplePresent, evacuationS, personDistanceM, combustibleDistanceM, clearHeightM, notes } = area;
  return { use, name, outdoors, lengthM, widthM, heightM, airMode, airChangesPerHour, airFlowM3PerH, openingWidthM, openingHeightM, openings, exits, surface, detectors, fuelLoad, peoplePresent, evacuationS, personDistanceM, combustibleDistanceM, clearHeightM, notes };
}

/** @throws on a word this program does not write: better than to take it for another */
function one<Word extends string>(words: readonly Word[], found: string): Word {
  const known = words.find((word) => word === found);
  if (known === undefined) throw new Error(`Unknown word ${found} of a place in the database`);
  return known;
}

function oneOrNull<Word extends string>(words: readonly Word[], found: string | null): Word | null {
  return found === null ? null : one(words, found);
}
