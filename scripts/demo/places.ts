import type { Db } from '@/lib/db/client';
import { createArea, createSite } from '@/lib/db/places/write-sites';
import type { Member } from '@/lib/db/people/find-member';
import type { AreaDetails, SiteDetails } from '@/lib/places/place';
import type { Calendar } from './calendar';
import { done, type Places } from './world';

const NOTHING_KNOWN: Omit<AreaDetails, 'use' | 'name' | 'outdoors'> = {
  lengthM: null, widthM: null, heightM: null, airMode: null, airChangesPerHour: null, airFlowM3PerH: null, openingWidthM: null, openingHeightM: null, openings: null, exits: null,
  surface: null, detectors: null, fuelLoad: null, peoplePresent: null, evacuationS: null, personDistanceM: null, combustibleDistanceM: null, clearHeightM: null, notes: null,
};

const HALL: SiteDetails = {
  name: 'Sports hall', kind: 'own', address: '3 Quay Road, gate in Weir Lane, sports hall', emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null,
  keyHolder: 'Caretaker', keyHolderPhone: '555 0118', notes: null,
};

const CHARGING: AreaDetails = {
  ...NOTHING_KNOWN, use: 'charging', name: 'Bench by the east door', outdoors: false, lengthM: 20, widthM: 12, heightM: 5, airMode: 'measured', airChangesPerHour: 4, openings: 'Double door to the yard', exits: 2,
  surface: 'unburnable', detectors: 'tested', fuelLoad: 'light', peoplePresent: 12, evacuationS: 90, personDistanceM: 2, combustibleDistanceM: 1.5, clearHeightM: 5,
};
const STORAGE: AreaDetails = {
  ...NOTHING_KNOWN, use: 'storage', name: 'Brick store in the yard', outdoors: true, surface: 'unburnable', detectors: 'tested', fuelLoad: 'light', peoplePresent: 0, personDistanceM: 0.7, combustibleDistanceM: 1.5, clearHeightM: 1,
};
const ARENA: AreaDetails = { ...NOTHING_KNOWN, use: 'arena', name: 'Net in the hall', outdoors: false, lengthM: 20, widthM: 12, heightM: 5, airMode: 'fan', openings: 'Double door to the yard, doors to the corridor', exits: 2, detectors: 'tested', fuelLoad: 'light', peoplePresent: 30, evacuationS: 90 };
const ISOLATION: AreaDetails = { ...NOTHING_KNOWN, use: 'isolation', name: 'Outdoor spot, 5 m from the wall', outdoors: true, personDistanceM: 6, combustibleDistanceM: 5, notes: 'Three metal containers, lids resting loose, dry sand in each' };
const DISPOSAL: AreaDetails = { ...NOTHING_KNOWN, use: 'disposal', name: 'Collected from the outdoor spot', outdoors: true };

/** The hall and its areas. */
export async function makePlaces(db: Db, by: Member, calendar: Calendar): Promise<Places> {
  const at = calendar.at(-86, '14:00');
  const { id: siteId } = done('the hall', await createSite(db, by, at, HALL));
  const area = async (details: AreaDetails): Promise<string> => done(details.name, await createArea(db, by, at, siteId, details)).id;
  const [chargingId, storageId] = [await area(CHARGING), await area(STORAGE)];
  for (const details of [ARENA, ISOLATION, DISPOSAL]) await area(details);
  return { siteId, chargingId, storageId };
}
