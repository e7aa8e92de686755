import { describe, expect, it } from 'vitest';
import { readDraft, writeDraft } from '@/lib/incidents/draft';
import { readIncident } from '@/lib/incidents/read-incident';
import { readFact } from '@/lib/incidents/read-facts';

const clock = { timeZone: 'Europe/London', now: new Date('2026-11-25T16:00:00Z') };
const filled = { clientKey: '12345678', called: 'nobody-needed', hurt: 'no', breathed: 'no', kinds: 'swelling', when: '2026-11-25T15:48', where: 'site:hall', doing: 'charging' };
const faultsOf = (given: Record<string, unknown>): Record<string, string> => { const read = readIncident({ ...filled, ...given }, clock); return read.ok ? {} : Object.fromEntries(read.faults.map(({ field, message }) => [field ?? '', message])); };
const factsOf = (given: Record<string, unknown>) => { const read = readIncident({ ...filled, ...given }, clock); return read.ok ? read.incident.facts : read.faults; };

describe('the form of an incident', () => {
  it('needs little to be a record', () => {
    expect(factsOf({})).toEqual({
      called: ['nobody-needed'], hurt: 'no', breathed: 'no', kinds: ['swelling'], packs: [], when: { at: '2026-11-25T15:48:00.000Z', known: true },
      where: { siteId: 'hall', areaId: null, place: null }, doing: 'charging', whatHappened: null, firstAid: null, whatWasDone: null, contacted: [],
    });
  });

  it('sent empty says everything that is missing at once, and takes nothing for granted', () => {
    const read = readIncident({ clientKey: '12345678', when: '', where: '' }, clock);
    expect(read.ok ? [] : read.faults.map(({ field }) => field)).toEqual(['called', 'hurt', 'breathed', 'kinds', 'when', 'where', 'doing']);
  });

  it('takes fire, smoke and injury together', () => { expect(factsOf({ kinds: ['fire', 'smoke-or-venting', 'injury'] })).toMatchObject({ kinds: ['fire', 'smoke-or-venting', 'injury'] }); });

  it('refuses that nobody was needed beside somebody who was called', () => { expect(faultsOf({ called: ['ambulance', 'nobody-needed'] })).toEqual({ called: expect.stringContaining('only one can be true') as string }); });

  it.each([[{ hurt: 'maybe' }, 'hurt'], [{ kinds: 'meteor' }, 'kinds'], [{ when: '2026-02-30T10:00' }, 'when'], [{ when: '2026-11-25T16:20' }, 'when'], [{ where: 'elsewhere' }, 'place'], [{ where: 'area:hall' }, 'where'], [{ doing: '' }, 'doing']])('refuses %j at its field', (given, field) => {
    expect(Object.keys(faultsOf(given))).toEqual([field]);
  });

  it('lets a clock be a little fast', () => { expect(factsOf({ when: '2026-11-25T16:05', guessed: 'yes' })).toMatchObject({ when: { at: '2026-11-25T16:05:00.000Z', known: false } }); });

  it('knows a place by what was chosen and what was written', () => {
    const where = (given: Record<string, unknown>) => { const read = readFact('where', given, clock); return read.ok ? read.value : read.faults; };
    expect(where({ where: 'area:hall:bench', place: 'left end' })).toEqual({ siteId: 'hall', areaId: 'bench', place: 'left end' });
    expect(where({ where: 'vehicle', place: '' })).toEqual({ siteId: null, areaId: null, place: 'In a vehicle' });
    expect(where({ where: 'elsewhere', place: 'the park' })).toEqual({ siteId: null, areaId: null, place: 'the park' });
  });

  it('takes labels picked and typed, each once; who took part did not only lay near', () => {
    expect(factsOf({ involved: ['W-11'], involvedTyped: 'w-11, W-12;  W  13 \n', nearby: 'W-07', nearbyTyped: 'W-12' })).toMatchObject({
      packs: [{ label: 'w-11', part: 'involved' }, { label: 'W-12', part: 'involved' }, { label: 'W 13', part: 'involved' }, { label: 'W-07', part: 'nearby' }],
    });
    expect(Object.keys(faultsOf({ involvedTyped: Array.from({ length: 61 }, (_, index) => `P${index}`).join(',') }))).toEqual(['involvedTyped']);
  });

  it('takes roles and initials, and no names', () => {
    const person = { person1Role: 'student', person1Initials: 'K. M.', person1Hurt: 'yes', person1Breathed: 'not-sure', person1FirstAid: 'rinsed' };
    const read = readIncident({ ...filled, ...person, person2Role: '', person2Initials: ' ' }, clock);
    expect(read.ok && read.incident.persons).toEqual([{ role: 'student', initials: 'K. M.', hurt: 'yes', breathed: 'not-sure', firstAid: 'rinsed' }]);
    expect(faultsOf({ ...person, person1Initials: 'Katherine' })).toEqual({ person1Initials: expect.stringContaining('no name') as string });
    expect(Object.keys(faultsOf({ person3Initials: 'K. M.' }))).toEqual(['person3Role', 'person3Hurt', 'person3Breathed']);
    expect(readIncident({ ...filled, person1Role: 'visitor', person1Hurt: 'no', person1Breathed: 'no' }, clock)).toMatchObject({ ok: true, incident: { persons: [{ initials: null }] } });
  });

  it('without its key is no form of ours', () => { expect(() => readIncident({ ...filled, clientKey: '' }, clock)).toThrow(); });
});

describe('a draft', () => {
  it('holds texts alone, and gives them back as they were', () => {
    const typed = { hurt: 'yes', kinds: ['fire', 'injury'], whatHappened: '' };
    expect(readDraft(writeDraft({ ...typed, intent: 'draft', photos: new File(['x'], 'a.jpg'), more: [new File(['x'], 'b.jpg')] }))).toEqual(typed);
  });

  it('of the length of a book is refused', () => { expect(() => writeDraft({ whatHappened: 'x'.repeat(70_000) })).toThrow(); });

  it('that is not ours is not read', () => { expect(() => readDraft('{"a":1}')).toThrow(); });
});
