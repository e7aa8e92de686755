import type { AirMode, Area, AreaUse, Detectors, Surface } from './place';
import type { RawFact } from './known-fact';

/** Options of the content's questions that say what an area's form says. What says less than the option is left out. */
const ROOM_AIR: Readonly<Record<AirMode, string>> = { closed: 'closed', 'bit-open': 'bit-open', 'wide-open': 'wide-open', openings: 'openings', fan: 'fan', measured: 'measured' };
const OTHER_AIR: Readonly<Partial<Record<AirMode, string>>> = { closed: 'shut', 'bit-open': 'bit-open', 'wide-open': 'wide-open', fan: 'fan' };
const SURFACE: Readonly<Record<Surface, string>> = { unburnable: 'yes', tile: 'partly', metal: 'metal', burnable: 'no', 'carpet-tiles': 'carpet-tiles' };
const ALARM: Readonly<Record<Detectors, string>> = { tested: 'yes', 'not-tested': 'partly', 'off-at-times': 'off', none: 'no' };
const HALL_ALARM: Readonly<Record<Detectors, string>> = { tested: 'on', 'not-tested': 'on', 'off-at-times': 'off', none: 'none' };

type Facts = readonly (Pick<RawFact, 'question' | 'answer'>)[];

const FACTS: Readonly<Record<AreaUse, (area: Area) => Facts>> = {
  charging: (area) => [
    { question: 'room-where', answer: area.outdoors ? 'outdoor' : null },
    { question: 'room-size', answer: { chargingLength: area.lengthM, chargingWidth: area.widthM, chargingHeight: area.heightM } },
    { question: 'room-air', answer: airOf(area, ROOM_AIR) },
    { question: 'room-window', answer: { chargingOpeningWidth: area.openingWidthM, chargingOpeningHeight: area.openingHeightM } },
    { question: 'room-fan', answer: { chargingFlow: area.airFlowM3PerH } },
    { question: 'room-ach', answer: { chargingAch: area.airChangesPerHour } },
    { question: 'room-people', answer: { peopleRoom: area.peoplePresent } },
    { question: 'room-leave', answer: { chargingEvac: area.evacuationS } },
    { question: 'table-surface', answer: area.surface === null ? null : SURFACE[area.surface] },
    { question: 'table-distances', answer: { combustibleDistance: area.combustibleDistanceM, clearHeight: area.clearHeightM, personDistance: area.personDistanceM } },
    { question: 'table-fuel', answer: area.fuelLoad },
    { question: 'alarm-charging', answer: area.detectors === null ? null : ALARM[area.detectors] },
  ],
  storage: (area) => [
    { question: 'store-where', answer: area.outdoors ? 'outside' : null },
    { question: 'store-size', answer: { storageLength: area.lengthM, storageWidth: area.widthM, storageHeight: area.heightM } },
    { question: 'store-air', answer: airOf(area, OTHER_AIR) },
    { question: 'store-leave', answer: { storageEvac: area.evacuationS } },
    { question: 'store-distances', answer: { storageCombustibleDistance: area.combustibleDistanceM, storageClearHeight: area.clearHeightM, storagePersonDistance: area.personDistanceM } },
    { question: 'store-fuel', answer: area.fuelLoad },
    { question: 'alarm-store', answer: area.detectors === null ? null : ALARM[area.detectors] },
  ],
  arena: (area) => [
    { question: 'team-flies', answer: 'yes' },
    { question: 'arena-room', answer: { arenaLength: area.lengthM, arenaWidth: area.widthM, arenaHeight: area.heightM } },
    { question: 'arena-air', answer: airOf(area, OTHER_AIR) },
    { question: 'arena-people', answer: { spectators: area.peoplePresent, arenaEvac: area.evacuationS } },
    { question: 'arena-fuel', answer: area.fuelLoad },
    { question: 'arena-detection', answer: area.detectors === null ? null : HALL_ALARM[area.detectors] },
  ],
  // Whether such a spot is good enough is a stop condition: it is asked on the spot, not read from a register.
  isolation: () => [],
  disposal: () => [],
};

/** What an area's form says, as answers. @param where name of its site and its own */
export function factsOfArea(area: Area, where: string): readonly RawFact[] {
  return FACTS[area.use](area).map((fact) => ({ ...fact, from: 'area', where }));
}

function airOf({ outdoors, airMode }: Area, options: Readonly<Partial<Record<AirMode, string>>>): string | null {
  return outdoors || airMode === null ? null : (options[airMode] ?? null);
}
