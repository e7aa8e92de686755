import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { evaluateCondition, type ConditionContext } from '@/lib/core/answers/condition';
import { evaluateFormula } from '@/lib/core/answers/formula';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { physicsModel } from '@/lib/core/physics-model';
import { stopsOf } from '@/lib/core/risk/stops';

const names = (name: string): number => {
  if (name === 'packs') return 24;
  if (name === 'sessions') return 60;
  throw new Error(`no ${name}`);
};

describe('a formula of the content', () => {
  it.each([
    ['packs * 2 + 1', 49],
    ['packs - 2 - 1', 21],
    ['packs / 8 / 3', 1],
    ['2 * (packs + 1)', 50],
    ['-packs + 30', 6],
    ['max(1, packs / 8)', 3],
    ['min(packs, max(4, packs / 2))', 12],
    ['packs * max(0, 365 - 3 * sessions)', 4440],
    ['ceil(packs / 10)', 3],
  ])('%s is %d', (formula, value) => {
    expect(evaluateFormula(formula, names)).toBe(value);
  });

  it.each(['', 'packs +', 'packs 2', '(packs', 'max(packs', 'packs / 0', 'constructor', 'process.exit()', '1;2'])('"%s" is refused', (formula) => {
    expect(() => evaluateFormula(formula, names)).toThrow();
  });
});

describe('a condition', () => {
  const context: ConditionContext = {
    state: (control) => (control === 'charge-box' ? 'partly' : 'absent'),
    input: (id) => (id === 'airMode' ? 'closed' : id === 'phone' ? '(01) 23, at the gate' : 5),
    derived: () => 1.2,
  };
  it.each([
    [{ control: 'charge-box', in: ['partly', 'in place'] as const }, true],
    [{ control: 'charge-box', in: ['absent'] as const }, false],
    [{ input: 'airMode', op: '=' as const, value: 'closed' }, true],
    [{ input: 'airMode', op: '>' as const, value: 'a' }, false],
    [{ input: 'exits', op: '>=' as const, value: 5 }, true],
    [{ input: 'exits', op: '!=' as const, value: 5 }, false],
    [{ derived: 'loadShare' as const, op: '>' as const, value: 1 }, true],
    [{ derived: 'storedWh' as const, op: '>' as const, input: 'localEnergyLimitWh' }, false],
    [{ input: 'airMode', op: '<' as const, value: 3, measure: 'digits' as const }, true],
    [{ input: 'phone', op: '<' as const, value: 3, measure: 'digits' as const }, false],
    [{ all: [] }, true],
    [{ any: [] }, false],
    [{ all: [{ input: 'exits', op: '<' as const, value: 9 }, { any: [{ control: 'charge-box', in: ['absent'] as const }, { input: 'exits', op: '=' as const, value: 5 }] }] }, true],
  ])('%j is %s', (condition, holds) => {
    expect(evaluateCondition(condition, context)).toBe(holds);
  });
});

describe('a venue', () => {
  const venueOf = (answers: Parameters<typeof resolveVenue>[1]['answers'], more = {}) => resolveVenue(edition1, { id: 'x', title: 'x', answers, ...more });

  it('takes the cautious value for what nobody knows, the default for what does not apply', () => {
    const unsure = venueOf({ 'room-leave': 'not sure' });
    expect(unsure.inputs.get('chargingEvac')).toBe(300);
    const outdoors = venueOf({ 'room-where': 'outdoor' });
    const hidden = outdoors.shown.has('room-size');
    expect(hidden).toBe(false);
    expect(outdoors.inputs.get('chargingVolume')).toBe(180);
    expect(outdoors.assumedInputs.some((one) => one.input === 'chargingVolume')).toBe(false);
  });

  it('says why each assumed figure was assumed', () => {
    const venue = venueOf({ 'room-leave': { exits: 2 }, 'room-people': 'not sure' });
    const why = new Map(venue.assumedInputs.map((one) => [one.input, one.because]));
    expect(why.get('chargingEvac')).toBe('field left empty');
    expect(why.get('peopleRoom')).toBe('not sure');
    expect(why.get('students')).toBe('not answered');
    expect(why.has('exits')).toBe(false);
  });

  it('works out the energy of a pack from its label when none is printed', () => {
    expect(venueOf({ 'team-packs': { packs: 10, cells: 3, capacityMah: 450 } }).inputs.get('packWh')).toBe(3 * 450 / 1000 * 3.7);
    expect(venueOf({ 'team-packs': { packs: 10, cells: 3, capacityMah: 450, packWh: 5.1 } }).inputs.get('packWh')).toBe(5.1);
  });

  it('lets a written state win over a hidden question, and a written input over an answer before anything is shown', () => {
    const venue = venueOf({ 'room-where': 'indoor', 'travel-trips': { roadTrips: 0, airTrips: 0 } }, { states: { 'travel-box': 'in place' }, inputs: { roadTrips: 4 } });
    expect(venue.shown.has('travel-case')).toBe(true);
    expect(venueOf({ 'travel-trips': { roadTrips: 0, airTrips: 0 } }).states.get('travel-box')).toBe('not applicable');
    expect(venueOf({ 'travel-trips': { roadTrips: 0, airTrips: 0 } }, { states: { 'travel-box': 'in place' } }).states.get('travel-box')).toBe('in place');
  });

  it('lets a counted exposure flow into the exposures that name it, never into inputs', () => {
    const venue = venueOf({}, { exposures: { charges: 1000 } });
    expect(venue.exposures.get('handlings')).toBe(4000);
    expect(venue.exposures.get('flights')).toBe(2880);
    const sessions = venueOf({}, { exposures: { sessions: 5 } });
    expect(sessions.inputs.get('sessions')).toBe(60);
    expect(sessions.exposures.get('setups')).toBe(240);
  });

  it('treats a tick left open as not sure, and no other', () => {
    const venue = venueOf({ 'people-kit': ['tidy'] }, { notSureTicks: { 'people-kit': ['caps'] } });
    expect(venue.states.get('tidy-pit')).toBe('in place');
    expect(venue.states.get('leads-covered')).toBe('not sure');
  });

  it('has five stops when nothing at all is answered', () => {
    // amendment A28
    expect(stopsOf(venueOf({}), physicsModel(edition1)).map((stop) => stop.id)).toEqual(['no-alarm', 'overnight', 'bare-on-burnable', 'no-number', 'no-officer']);
  });
});
