import type { Answer } from '@/lib/core/document';

type Answers = Readonly<Record<string, Answer>>;

const FIRST: Answers = {
  'room-where': 'indoor', 'room-exits': 'yes', 'room-off-exit': 'yes', 'routine-attended': 'always', 'routine-elsewhere': 'yes', 'alarm-building': 'yes', 'alarm-raise': 'yes',
  'response-number': '555 0100', 'response-meeting': 'Under the lime trees at the north gate', 'response-second': 'The far end of the sports field', 'response-address': '3 Quay Road, gate in Weir Lane, sports hall',
  'damaged-apart': 'yes', 'damaged-outdoors': 'clear', 'people-needs': 'air', 'people-breathing': 'yes', 'table-container': 'bag-one', 'table-surface': 'yes',
};

const TEAM: Answers = {
  'team-packs': { packs: 24, cells: 4, capacityMah: 850, packWh: 12.6 }, 'team-voltage': 'standard', 'team-people': { students: 12, sessions: 60 }, 'team-use': { chargesPerPackSession: 1, crashShare: 0.1 }, 'team-flies': 'yes', 'team-officer': 'yes',
  'team-consent': 'both', 'team-source': 'yes', 'team-limit-asked': 'none', 'damaged-number': { damagedPacks: 3, disposedPacks: 4, lastWaitDays: 6 }, 'damaged-keep': { sand: 'yes', mark: 'yes' }, 'damaged-handover': 'week', 'damaged-dispose': { taped: 'yes', count: 'yes', collector: 'yes' },
};

const STORE: Answers = {
  'store-where': 'outside', 'store-exit': 'yes', 'store-neighbours': 'day', 'store-near-people': { neighboursStore: 0, neighboursCharging: 40 }, 'store-leave': { storageEvac: 60 }, 'store-packs': { packsStored: 24, packsPerLotStorage: 2 },
  'store-distances': { storageCombustibleDistance: 1.5, storageClearHeight: 1, storagePersonDistance: 0.7 }, 'store-fuel': 'light', 'store-cabinet': 'yes', 'store-lots': 'yes', 'store-charge': 'yes', 'store-check': 'yes', 'store-keep': { cool: 'yes', locked: 'yes', together: 'yes' },
};

const ROOM: Answers = {
  'room-size': { chargingLength: 20, chargingWidth: 12, chargingHeight: 5 }, 'room-air': 'measured', 'room-ach': { chargingAch: 4 }, 'room-people': { peopleRoom: 12, peopleNear: 2 }, 'room-leave': { chargingEvac: 90 }, 'room-smoke-out': 'yes', 'room-building': { door: 'yes', air: 'yes', sprinkler: 'no' },
  'table-packs': { packsOnTable: 8, packsPerLotCharging: 1 }, 'table-clear': 'yes', 'table-distances': { combustibleDistance: 1.5, clearHeight: 5, personDistance: 2 }, 'table-fuel': 'light', 'table-barrier': 'yes',
  'electric-load': { chargers: 4, chargerWatts: 120, otherWatts: 0 }, 'electric-circuit': { circuitAmps: 16, mainsVolts: 230 }, 'electric-kit': { sum: 'yes', wall: 'yes', guard: 'yes', switch: 'yes', kit: 'yes', leakage: 'not sure' },
};

const ROUTINE: Answers = {
  'routine-check': 'yes', 'routine-crash': 'yes', 'routine-rest': 'yes', 'routine-retire': 'partly', 'routine-rate': 'yes', 'routine-charger': 'yes', 'routine-limits': 'yes', 'routine-settings': { card: 'yes', readback: 'yes', 'one-type': 'yes' }, 'routine-parallel': 'yes',
  'alarm-charging': 'yes', 'alarm-store': 'yes', 'response-ready': { drill: 'no', card: 'yes', aid: 'yes', told: 'no', after: 'yes' }, 'people-trained': 'yes', 'people-named': 'yes', 'people-adult': 'yes', 'people-crash': 'hour',
  'people-kit': { caps: 'yes', case: 'yes', tidy: 'yes', guard: 'yes', warning: 'yes', solder: 'yes' },
};

const ARENA: Answers = {
  'arena-room': { arenaLength: 20, arenaWidth: 12, arenaHeight: 5 }, 'arena-air': 'fan', 'arena-people': { spectators: 18, arenaEvac: 90 }, 'arena-fuel': 'light', 'arena-net': 'yes', 'arena-arm': 'yes', 'arena-detection': 'on',
  'arena-kit': { cage: 'yes', failsafe: 'yes', glasses: 'yes', line: 'no', walk: 'yes', cables: 'yes' },
};

const TRAVEL: Answers = {
  'travel-trips': { roadTrips: 4, warmTrips: 1, packsPerTrip: 18, airTrips: 0 }, 'travel-kind': 'minibus', 'travel-case': 'yes', 'travel-full': 'yes', 'travel-damaged': 'yes', 'travel-habits': { nothot: 'yes', coolcase: 'yes', plan: 'no', apart: 'yes' },
};

/** How the team of the demo answers the questions of the second edition at the beginning of its season. */
export const FIRST_ANSWERS: Answers = { ...FIRST, ...TEAM, ...STORE, ...ROOM, ...ROUTINE, ...ARENA, ...TRAVEL };

/** What is different in the next version: six new packs, and three things done. */
export const NEXT_ANSWERS: Answers = {
  'team-packs': { packs: 26, cells: 4, capacityMah: 850, packWh: 12.6 }, 'store-packs': { packsStored: 26, packsPerLotStorage: 2 }, 'routine-retire': 'yes', 'arena-kit': { cage: 'yes', failsafe: 'yes', glasses: 'yes', line: 'yes', walk: 'yes', cables: 'yes' },
};

export const NOTES: Readonly<Record<string, string>> = {
  'electric-kit': 'The caretaker finds out about leakage protection.',
  'routine-retire': 'We retire what is swollen or dented; a written rule for old packs is missing.',
  'response-ready': 'Drill planned with the whole team.',
};
