import { describe, expect, it } from 'vitest';
import { currentContent } from '@/lib/content/editions';
import { factsOf, type RecordForFacts } from '@/lib/places/facts-of';
import type { Area } from '@/lib/places/place';
import { AIR_MODES, DETECTORS, FUEL_LOADS, SURFACES } from '@/lib/places/place';
import { areaForTest, packFactForTest, siteForTest } from '@/tests/support/place-for-tests';

const SCHOOL = { emergencyNumber: '000', meetingPlace: 'north gate', secondMeetingPlace: null };
const NONE = { registerDays: 10, isolated: 0, handedOver: 0, lastWaitDays: null };
const ROOM = { lengthM: 10, widthM: 6, heightM: 3, evacuationS: 90, exits: 2, peoplePresent: 20, combustibleDistanceM: 1, clearHeightM: 2, personDistanceM: 1.5, fuelLoad: 'ordinary', detectors: 'tested', surface: 'tile', airMode: 'closed' } as const;
const AREAS: readonly Area[] = (['charging', 'storage', 'arena', 'isolation', 'disposal'] as const).map((use) => areaForTest({ ...ROOM, use, id: use, name: use }));
const FULL: RecordForFacts = { school: SCHOOL, site: siteForTest({ areas: AREAS }), packs: [packFactForTest()], putAside: NONE };

const answers = (record: Partial<RecordForFacts>) => Object.fromEntries(factsOf(currentContent, { ...FULL, ...record }).map((fact) => [fact.question, fact.answer]));
const oneArea = (given: Partial<Area>) => answers({ site: siteForTest({ areas: [areaForTest(given)] }), packs: [] });

/** Questions the content lets be filled in from here, of which neither a site, an area nor a pack says enough. */
const NOT_WRITTEN_DOWN = ['team-officer', 'team-consent', 'team-limit-asked', 'team-limit', 'electric-circuit', 'team-source'];

describe('what the school has written down already', () => {
  it('answers every question the content lets be filled in from it, but those nobody wrote down', () => {
    const known = new Set(factsOf(currentContent, { ...FULL, putAside: { ...NONE, registerDays: 400 } }).filter(({ prefilled }) => prefilled).map(({ question }) => question));
    const asked = currentContent.questions.filter(({ prefilledFrom }) => prefilledFrom?.some((source) => source !== 'sessions')).map(({ id }) => id);
    expect(asked.filter((id) => !known.has(id))).toEqual(asked.filter((id) => NOT_WRITTEN_DOWN.includes(id)));
  });

  it('is the room as the content asks for it', () => {
    expect(answers({})).toMatchObject({
      'response-address': '1 Tern Lane, gate B, hall', 'response-number': '000', 'response-meeting': 'north gate',
      'room-size': { chargingLength: 10, chargingWidth: 6, chargingHeight: 3 }, 'room-air': 'closed', 'room-leave': { chargingEvac: 90 }, 'table-surface': 'partly', 'table-fuel': 'ordinary', 'alarm-charging': 'yes',
      'store-size': { storageLength: 10 }, 'store-air': 'shut', 'store-leave': { storageEvac: 90 }, 'arena-room': { arenaHeight: 3 }, 'arena-people': { spectators: 20, arenaEvac: 90 }, 'arena-detection': 'on', 'team-flies': 'yes',
    });
  });

  it('says where it stands, and whether it fills the question or only stands beside it', () => {
    const facts = factsOf(currentContent, FULL);
    expect(facts.find(({ question }) => question === 'room-size')).toMatchObject({ from: 'area', where: 'Main hall, charging', prefilled: true });
    expect(facts.find(({ question }) => question === 'alarm-charging')).toMatchObject({ prefilled: false });
  });

  it('never answers a stop condition of exits or of the spot for suspect packs', () => {
    expect(Object.keys(answers({}))).not.toEqual(expect.arrayContaining(['room-exits']));
    expect(Object.keys(answers({}))).not.toEqual(expect.arrayContaining(['damaged-outdoors']));
  });

  it('leaves out what is not known, and a figure outside of the question’s bounds by itself', () => {
    expect(oneArea({ lengthM: 10, widthM: null, heightM: 1 })).toEqual({ 'response-address': '1 Tern Lane, gate B, hall', 'response-number': '000', 'response-meeting': 'north gate', 'room-size': { chargingLength: 10 } });
  });

  it('is nothing of a use that has two areas here: neither may stand for both', () => {
    const two = [areaForTest({ ...ROOM }), areaForTest({ ...ROOM, id: 'b', lengthM: 30 })];
    expect(answers({ site: siteForTest({ areas: two }) })).not.toHaveProperty('room-size');
  });

  it('of an away site takes nothing from our own school', () => {
    expect(answers({ site: siteForTest({ kind: 'away' }), packs: [] })).toEqual({ 'response-address': '1 Tern Lane, gate B, hall' });
  });

  it('has an option of the content for every word of an area', () => {
    for (const airMode of AIR_MODES) expect(oneArea({ airMode })['room-air']).toBe(airMode);
    for (const surface of SURFACES) expect(oneArea({ surface })).toHaveProperty('table-surface');
    for (const fuelLoad of FUEL_LOADS) expect(oneArea({ fuelLoad })['table-fuel']).toBe(fuelLoad);
    for (const use of ['charging', 'storage', 'arena'] as const) {
      for (const detectors of DETECTORS) expect(Object.keys(oneArea({ use, detectors })).some((id) => /^alarm-|detection/.test(id))).toBe(true);
    }
    expect(oneArea({ outdoors: true })['room-where']).toBe('outdoor');
  });
});

describe('what the register says of the packs', () => {
  const team = (packs: RecordForFacts['packs'], putAside: RecordForFacts['putAside'] = NONE) => answers({ site: siteForTest(), packs, putAside });

  it('counts those in service, and lets the one with most energy stand for all', () => {
    const packs = [packFactForTest(), packFactForTest({ series: 6, capacityMah: 1100, energyWh: 24.4, printedWh: 24.4 }), packFactForTest({ serves: false, series: 8, energyWh: 99 })];
    expect(team(packs)['team-packs']).toEqual({ packs: 2, cells: 6, capacityMah: 1100, packWh: 24.4 });
    expect(team([packFactForTest({ parallel: 2 })])['team-packs']).toEqual({ packs: 1, cells: 4, capacityMah: 1700 });
  });

  it.each([
    [['full-4-20'], 'standard'], [['full-4-35'], 'high'], [['full-4-20', 'full-4-35'], 'both'], [['full-4-20', 'not-marked'], 'unmarked'], [['full-4-20', 'other-chemistry'], undefined], [['full-other'], undefined],
  ])('of %s says %s', (types, voltage) => { expect(team(types.map((cellType) => packFactForTest({ cellType })))['team-voltage']).toBe(voltage); });

  it('takes one second-hand pack for the answer, and silence for none', () => {
    expect(team([packFactForTest(), packFactForTest({ secondHand: true })])['team-source']).toBe('no');
    expect(team([packFactForTest()])).not.toHaveProperty('team-source');
  });

  it('says nothing of a season before it has seen one', () => {
    expect(team([packFactForTest()])).not.toHaveProperty('damaged-number');
    expect(team([packFactForTest()], { ...NONE, registerDays: 300, isolated: 2, handedOver: 5, lastWaitDays: 12 })['damaged-number']).toEqual({ damagedPacks: 2, disposedPacks: 5, lastWaitDays: 12 });
  });

  it('counts as stored here what lies here, and what nobody knows the place of', () => {
    const store = areaForTest({ use: 'storage', id: 'store' });
    const packs = [packFactForTest({ areaId: 'store' }), packFactForTest({ areaId: null }), packFactForTest({ areaId: 'elsewhere' })];
    expect(answers({ site: siteForTest({ areas: [store] }), packs })['store-packs']).toEqual({ packsStored: 2 });
  });

  it('is nothing while the register is empty', () => { expect(Object.keys(team([]))).toEqual(['response-address', 'response-number', 'response-meeting']); });
});
