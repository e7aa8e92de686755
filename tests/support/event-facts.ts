import { edition2 } from '@/lib/content/edition-2';
import { guidanceWords } from '@/lib/content/fill-guidance';
import type { EventAreaFact, EventFacts, EventPackFact } from '@/lib/papers/event/facts';

const NO_AREA: EventAreaFact = {
  use: 'charging', name: 'Room', outdoors: false, lengthM: null, widthM: null, heightM: null, openings: null, air: null, exits: null, evacuationS: null,
  surface: null, detectors: null, fuelLoad: null, peoplePresent: null, personDistanceM: null, combustibleDistanceM: null, clearHeightM: null, notes: null,
};

/** An area as little known as can be, with what a test says of it. */
export const areaFact = (over: Partial<EventAreaFact>): EventAreaFact => ({ ...NO_AREA, ...over });

export const packFacts = (count: number, over: Partial<EventPackFact> = {}): readonly EventPackFact[] => Array.from({ length: count }, (_, index) => ({
  label: `HW-${String(index + 1).padStart(3, '0')}`, kind: '4S 850 mAh', energyWh: 12.58, fullVoltage: '4.20 V a cell', state: 'in use', lastCheck: '2 December 2026, fit', charge: '3.79 to 3.81 V a cell', air: null, ...over,
}));

const AREAS: readonly EventAreaFact[] = [
  areaFact({ use: 'charging', name: 'Geräteraum Süd', lengthM: 8.2, widthM: 6, heightM: 3, openings: 'two windows to the yard', air: 'about 2 changes an hour (1 to 4), windows a bit open', exits: 2, evacuationS: 75, surface: 'Neither burns nor conducts, 30 cm (1 ft) wider than the packs', detectors: 'A smoke alarm, tested and heard', fuelLoad: 'Furniture, books, displays, seats', peoplePresent: 12, personDistanceM: 2.5, combustibleDistanceM: 1.2, clearHeightM: 1.4 }),
  areaFact({ use: 'storage', name: 'Cupboard by the gate', lengthM: 3, widthM: 2, heightM: 2.4, exits: 1 }),
  areaFact({ use: 'arena', name: 'Спортивный зал', lengthM: 30, widthM: 18, heightM: 7, exits: 4, evacuationS: 120, peoplePresent: 180 }),
  areaFact({ use: 'isolation', name: 'Yard, 5 m from the wall', outdoors: true, personDistanceM: 8 }),
];

const SITE: EventFacts['site'] = {
  name: 'Halle am Weiher', kind: 'away', address: 'Weiherstraße 12, gate 2, hall', emergencyNumber: '555 0112', meetingPlace: 'bicycle stand at the north gate', secondMeetingPlace: 'car park of the library',
  caretaker: 'Żaneta Öztürk', caretakerPhone: '555 0120', notes: 'The gate is shut at 18:00.', areas: AREAS, describedBy: 'Ž. Öztürk, 20 November 2026',
};

const ASSESSMENT: EventFacts['assessment'] = {
  number: 'SB-7F2K-0031', title: 'Halle am Weiher', version: 2, signedOn: '24 November 2026', holdsUntil: '31 July 2027', force: 'in force', covers: { packs: 26, storedWh: 330, people: 14 },
  risks: [
    { id: 'charge-runaway', title: 'A pack runs away while it charges', grade: 'high', gradeWord: 'High', couldKill: true },
    { id: 'transit-fire', title: 'A pack burns on the road', grade: 'moderate', gradeWord: 'Moderate', couldKill: false },
    { id: 'arena-breach', title: 'A drone leaves the net', grade: 'low', gradeWord: 'Low', couldKill: false },
  ],
  accepted: ['No net above the arena, until 12 December 2026: nobody inside or within 5 m.'],
};

/** Facts of an away event with everything filled in; places and people are invented. */
export function eventFacts(over: Partial<EventFacts> = {}): EventFacts {
  const packs = over.packs ?? packFacts(18);
  const site = over.site ?? SITE;
  return {
    content: edition2, guidance: wordsOfPlace(site, '555 0102'), number: 'SB-4C1N-0007', state: 'for signature', format: 'A4', language: 'en-GB', madeAt: '2026-11-30T09:00:00.000Z', madeOn: '30 November 2026', fingerprint: '9c41 07be 5d20 e83a',
    verifyAt: 'https://sandbucket.example/verify?number=SB-4C1N-0007',
    readAt: { event: 'https://sandbucket.example/events/1/file', 'response card': 'https://sandbucket.example/events/1/response-card', 'pack list': 'https://sandbucket.example/events/1/pack-list', briefing: 'https://sandbucket.example/events/1/briefing' },
    units: 'metric',
    preparer: { name: 'Åsa Łukasiewicz', post: 'teacher', telephone: '555 0101', employer: 'Heron Weir Trust' }, officer: { name: 'Γιώργος Νικολάου', post: 'safety officer', telephone: '555 0102', employer: 'Heron Weir Trust' },
    school: { name: 'Heron Weir School', address: 'Weir Lane 3', officerPhone: '555 0102' },
    title: 'Winter cup, second round', when: 'Saturday 5 December 2026, 09:00 to 17:30 GMT', until: '5 December 2026', site, teams: 4, people: 46, spectators: 120,
    adults: [
      { name: 'Åsa Łukasiewicz', parts: ['leads'], phone: '555 0101', mayStop: true, firstAid: false },
      { name: 'Đặng Thị Hồng', parts: ['first aid', 'drives'], phone: '555 0104', mayStop: false, firstAid: true },
      { name: '山田太郎', parts: ['contact at the venue'], phone: null, mayStop: true, firstAid: false },
    ],
    schedule: [{ time: '09:00', what: 'Doors open, check of the hall' }, { time: '10:00', what: 'First match' }, { time: '17:00', what: 'Closing check' }],
    assessment: ASSESSMENT,
    checks: [
      { id: 'assessment', group: 'The place', state: 'ok', words: 'A signed assessment of the place is in force.', accepted: null },
      { id: 'covers', group: 'The place', state: 'accepted', words: 'It covers 14 people in the room while packs charge; 16 come.', accepted: { reason: 'Two of them stay in the hall.', by: 'Γιώργος Νικολάου' } },
      { id: 'checked', group: 'The packs', state: 'ok', words: 'Every pack was checked within 7 days.', accepted: null },
    ],
    packs, totalWh: packs.reduce((sum, { energyWh }) => sum + (energyWh ?? 0), 0), packsWithoutEnergy: packs.filter(({ energyWh }) => energyWh === null).length,
    venue: [{ id: 'alarm', name: 'The venue’s own alarm', value: 'call point by the main door, heard in every room' }, { id: 'shared', name: 'Who shares the hall', value: 'a choir upstairs until noon, told on 20 November' }, { id: 'detectors', name: 'Smoke detection that day', value: null }],
    provides: [{ id: 'circuit', words: 'A circuit of its own for the chargers', stands: true, said: 'agreed' }, { id: 'spot', words: 'An outdoor spot, 3 m from doors and windows', stands: false, said: 'OPEN' }],
    brings: [{ id: 'slab', words: 'Slab, one box for each pack', stands: true, said: 'agreed' }, { id: 'net', words: 'Net all round and above', stands: true, said: 'agreed' }],
    charging: [{ id: 'where', name: 'Where packs are charged', value: 'Geräteraum Süd' }, { id: 'most', name: 'How many at once', value: '4' }, { id: 'circuit', name: 'Circuit', value: null }],
    damaged: [{ id: 'damaged', name: 'A damaged pack', value: 'stays at the venue’s outdoor spot until the collector says otherwise; never in the bus' }],
    night: [{ id: 'night', name: 'Where packs are overnight', value: 'they go home the same day' }],
    travel: { byRoad: true, byAir: false, road: [{ id: 'case', name: 'Case', value: 'rigid, one pack to a slot, strapped down' }, { id: 'vehicle', name: 'Vehicle and driver', value: 'school minibus, Đặng Thị Hồng' }], air: [], airRules: [] },
    ...over,
  };
}

/** The words for the guidance texts, out of what is known of the place. */
export function wordsOfPlace(site: EventFacts['site'], officerPhone: string): EventFacts['guidance'] {
  return guidanceWords(edition2.guidance?.fields ?? [], {
    number: site.emergencyNumber ?? '', meetingPoint: site.meetingPlace ?? '', secondMeetingPoint: site.secondMeetingPlace ?? '', siteAddress: site.address, officerPhone,
  });
}
