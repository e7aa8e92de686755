import type { PackForFacts } from '@/lib/places/facts-of-packs';
import type { Area, Site } from '@/lib/places/place';

/** An area of our own invention of which nothing is known but what is given. */
export function areaForTest(given: Partial<Area> = {}): Area {
  return {
    id: 'area-1', siteId: 'site-1', archivedAt: null, revision: 1, use: 'charging', name: 'Table', outdoors: false, lengthM: null, widthM: null, heightM: null, airMode: null, airChangesPerHour: null, airFlowM3PerH: null,
    openingWidthM: null, openingHeightM: null, openings: null, exits: null, surface: null, detectors: null, fuelLoad: null, peoplePresent: null, evacuationS: null, personDistanceM: null, combustibleDistanceM: null, clearHeightM: null, notes: null, ...given,
  };
}

export function siteForTest(given: Partial<Site> = {}): Site {
  return { id: 'site-1', name: 'Main hall', kind: 'own', address: '1 Tern Lane, gate B, hall', emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null, keyHolder: null, keyHolderPhone: null, notes: null, archivedAt: null, revision: 1, areas: [], ...given };
}

export function packFactForTest(given: Partial<PackForFacts> = {}): PackForFacts {
  return { serves: true, series: 4, parallel: 1, capacityMah: 850, printedWh: null, energyWh: 12.58, cellType: 'full-4-20', secondHand: false, areaId: null, ...given };
}
