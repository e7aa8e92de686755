import type { CheckedPack, CheckFacts } from '@/lib/events/check/facts';
import { NO_DETAILS } from '@/lib/events/details';
import type { EventDetails } from '@/lib/events/details';

export const EVENT_NOW = new Date('2026-11-25T12:00:00.000Z');

/** A pack of our own invention that may travel. */
export function checkedPack(given: Partial<CheckedPack> = {}): CheckedPack {
  return { label: 'W-01', state: 'in-use', damaged: false, stopped: null, lastCheckAt: new Date('2026-11-24T09:00:00.000Z'), charge: 'storage', energyWh: 12.6, ...given };
}

/** Everything said, nothing open: an away day by road without charging there. */
const ALL_SAID: EventDetails = {
  ...NO_DETAILS, alarm: 'Call point by the door, a bell', detection: 'on', hall: 'nobody', charging: 'no', damaged: 'venue-spot', damagedPlace: 'yard behind the hall', night: 'no-night',
  way: 'road', vehicle: 'School minibus', case: 'yes', leads: 'yes', neverWarm: 'yes', apart: 'yes', plan: 'yes', twoCheck: 'yes',
};

/** Facts by which every line passes; whatever matters to a test is given. */
export function checkFactsForTest({ details, ...given }: Partial<Omit<CheckFacts, 'details'>> & { readonly details?: Partial<EventDetails> } = {}): CheckFacts {
  return {
    eventId: 'event-1', now: EVENT_NOW, startsAt: new Date('2026-12-05T09:00:00.000Z'), lastDay: '2026-12-05', manyDays: false,
    site: { id: 'site-1', kind: 'away', emergencyNumber: '000', meetingPlace: 'car park', hasOutdoorSpot: true, hasChargingArea: false },
    people: 16, spectators: 40,
    adults: [{ name: 'K. Marsh', parts: ['leads', 'may-stop', 'first-aid'], phone: '01 23' }, { name: 'L. Fenn', parts: ['drives'], phone: '01 24' }, { name: 'Centre manager', parts: ['venue'], phone: '01 25' }],
    packs: [checkedPack(), checkedPack({ label: 'W-02' })],
    assessment: { versionId: 'version-1', name: '“Hall”, version 1', force: 'in force', holdsUntil: '2027-07-31', covers: { packs: 20, storedWh: 400, people: 24, spectators: 60 }, endedAcceptances: [] },
    assessmentOnItsWay: null, notAgreed: [], checkedWithinDays: 7, details: { ...ALL_SAID, ...details }, ...given,
  };
}
