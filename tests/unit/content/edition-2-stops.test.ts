import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { evaluateCondition } from '@/lib/core/answers/condition';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { stateOf } from '@/lib/core/answers/venue';
import type { Answer } from '@/lib/core/document';

const NEVER = [
  'charge-on-exit', 'store-on-exit', 'no-way-out', 'no-alarm', 'no-number', 'left-alone', 'overnight', 'damaged-with-sound', 'bare-on-burnable',
  'damaged-travels', 'air-rules', 'circuit-over', 'students-alone', 'swollen-in-use', 'no-officer',
  'nobody-helps', 'charged-elsewhere', 'alarm-isolated', 'people-asleep', 'parallel-mixed', 'mixed-voltage', 'owner-unaware',
];

/** Ids of the stops that fire; figures worked out of smoke, energy and load are left out. */
function firing(answers: Readonly<Record<string, Answer>>): readonly string[] {
  const venue = resolveVenue(edition2, { id: 'a', title: 'a', answers });
  const context = { state: (control: string) => stateOf(venue, control), input: (id: string) => venue.inputs.get(id) ?? '', derived: () => 0 };
  return edition2.stops.filter(({ when }) => evaluateCondition(when, context)).map(({ id }) => id);
}
const ROAD = { 'travel-trips': { roadTrips: 5, warmTrips: 1, packsPerTrip: 8, airTrips: 0 } };
const AIR = { 'travel-trips': { roadTrips: 0, packsPerTrip: 8, airTrips: 1 } };

describe('whether a stop may be accepted', () => {
  const kindOf = (id: string) => edition2.stops.find((stop) => stop.id === id)?.acceptable;

  it.each(NEVER)('%s: never', (id) => { expect(kindOf(id)?.kind).toBe('never'); });
  it.each(['over-energy-limit', 'smoke-too-thick'])('%s: with a paper of somebody else', (id) => { expect(kindOf(id)).toMatchObject({ kind: 'with-paper', paper: expect.stringContaining('in writing') as string }); });
  it.each([
    ['no-outdoor-spot', 'any suspect pack is left where it is'],
    ['no-net', 'nobody is inside or within 5 m'],
  ])('%s: for thirty days, with what replaces it', (id, replacedBy) => {
    expect(kindOf(id)).toMatchObject({ kind: 'until', days: 30, replacedBy: expect.stringContaining(replacedBy) as string });
  });

  it('is said of every one', () => {
    expect(edition2.stops.map(({ id }) => id).sort()).toEqual([...NEVER, 'over-energy-limit', 'smoke-too-thick', 'no-outdoor-spot', 'no-net'].sort());
  });

  it('each is still to be read by those who know fires', () => {
    expect(new Set(edition2.stops.map(({ confirm }) => confirm))).toEqual(new Set(['to be confirmed by the local fire service and first-aid trainer']));
  });
});

describe('a stop', () => {
  it('fires on nothing answered where ignorance could kill', () => {
    expect(firing({})).toEqual([
      'charge-on-exit', 'store-on-exit', 'no-alarm', 'damaged-with-sound', 'left-alone', 'overnight', 'bare-on-burnable', 'no-number', 'no-officer', 'no-way-out',
      'mixed-voltage', 'people-asleep', 'owner-unaware',
    ]);
  });

  it.each<[string, string, Readonly<Record<string, Answer>>, boolean]>([
    ['a way out that is sometimes blocked', 'no-way-out', { 'room-exits': 'no' }, true],
    ['one clear door', 'no-way-out', { 'room-exits': 'one' }, false],
    ['the half answer of the first edition', 'no-way-out', { 'room-exits': 'partly' }, true],
    ['not sure of the way out', 'no-way-out', { 'room-exits': 'not sure' }, true],
    ['a corridor', 'charge-on-exit', { 'room-where': 'corridor', 'room-off-exit': 'yes' }, true],
    ['a telephone alone', 'no-alarm', { 'alarm-building': 'no', 'alarm-raise': 'yes' }, true],
    ['a call point and a telephone', 'no-alarm', { 'alarm-building': 'yes', 'alarm-raise': 'yes' }, false],
    ['a helper missing', 'nobody-helps', { 'people-needs': 'help', 'people-help': 'no' }, true],
    ['nobody who needs one', 'nobody-helps', { 'people-needs': 'nobody', 'people-help': 'no' }, false],
    ['packs joined at will', 'parallel-mixed', { 'routine-parallel': 'no' }, true],
    ['one kind of pack', 'mixed-voltage', { 'team-voltage': 'standard' }, false],
    ['packs at home', 'charged-elsewhere', { 'routine-elsewhere': 'no' }, true],
    ['haze in the hall', 'alarm-isolated', { 'arena-detection': 'off' }, true],
    ['sleepers above a store without alarm', 'people-asleep', { 'store-neighbours': 'night', 'store-where': 'own', 'alarm-store': 'no' }, true],
    ['sleepers above a store with its own air and an alarm', 'people-asleep', { 'store-neighbours': 'night', 'store-where': 'own', 'alarm-store': 'yes' }, false],
    ['sleepers, store outdoors', 'people-asleep', { 'store-neighbours': 'night', 'store-where': 'outside', 'alarm-store': 'no' }, false],
    ['the owner asked', 'owner-unaware', { 'team-consent': 'owner' }, false],
    ['no net and nobody near', 'no-net', { 'arena-net': 'nobody' }, false],
    ['damaged packs on the road', 'damaged-travels', { ...ROAD, 'travel-damaged': 'no' }, true],
    ['by air, half a check', 'air-rules', { ...AIR, 'travel-air': 'not sure' }, true],
    ['by air, all done', 'air-rules', { ...AIR, 'travel-damaged': 'yes', 'travel-air': ['check', 'cabin'] }, false],
    ['by air, spares checked in', 'air-rules', { ...AIR, 'travel-air': ['check'] }, true],
    ['large packs without approval', 'air-rules', { ...AIR, 'team-packs': { packWh: 120 }, 'travel-air': ['check', 'cabin'], 'travel-approval': 'no' }, true],
    ['large packs approved', 'air-rules', { ...AIR, 'team-packs': { packWh: 120 }, 'travel-damaged': 'yes', 'travel-air': ['check', 'cabin'], 'travel-approval': 'yes' }, false],
    ['no number', 'no-number', { 'response-number': '', 'response-meeting': 'the oak' }, true],
    ['no meeting place', 'no-number', { 'response-number': '0123', 'response-meeting': '' }, true],
    ['number and meeting place', 'no-number', { 'response-number': '0123', 'response-meeting': 'the oak' }, false],
  ])('%s: %s', (_, id, answers, fires) => { expect(firing(answers).includes(id)).toBe(fires); });

  it('asks for three digits in the number', () => {
    const stop = edition2.stops.find(({ id }) => id === 'no-number');
    expect(JSON.stringify(stop?.when)).toContain('{"input":"localNumber","op":"<","value":3,"measure":"digits"}');
  });
});
