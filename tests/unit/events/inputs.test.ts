import { describe, expect, it } from 'vitest';
import { readAdults } from '@/lib/events/adults-input';
import { readBasics } from '@/lib/events/event-input';
import { EventQuerySchema, searchEvents, type ListedEvent } from '@/lib/events/event-list';
import { fileStanding } from '@/lib/events/file-standing';
import { acceptLine, cancel, reopen, sendBack, signAsOfficer, submit, withdraw } from '@/lib/events/lifecycle';
import { linkEnd, whyEnded } from '@/lib/events/links';
import { addByLabel, choosePacks } from '@/lib/events/packs-input';
import { readSchedule, writeSchedule } from '@/lib/events/schedule';
import { EVENT_STATES, type EventStanding } from '@/lib/events/standing';

const BASICS = { title: 'Autumn cup', siteId: 's', starts: '2026-12-05T09:00', ends: '2026-12-05T17:30', teams: 2, people: 16, spectators: null, schedule: '09:00 Doors open\n10.15-11:00 First match' };

describe('what is typed of an event', () => {
  it('is read by the clock of the school, with the day in lines', () => {
    expect(readBasics(BASICS, 'Europe/Berlin')).toMatchObject({ ok: true, value: { startsAt: new Date('2026-12-05T08:00:00Z'), schedule: [{ time: '09:00', what: 'Doors open' }, { time: '10:15 to 11:00', what: 'First match' }] } });
  });

  it('is refused when it ends before it begins, lasts too long, or has no such time', () => {
    expect(readBasics({ ...BASICS, ends: '2026-12-05T08:00' }, 'UTC')).toMatchObject({ ok: false, faults: [{ field: 'ends' }] });
    expect(readBasics({ ...BASICS, ends: '2026-12-25T08:00' }, 'UTC')).toMatchObject({ ok: false, faults: [{ field: 'ends' }] });
    expect(readBasics({ ...BASICS, starts: '2026-02-30T08:00', schedule: 'no time' }, 'UTC')).toMatchObject({ ok: false, faults: [{ field: 'starts' }, { field: 'schedule' }] });
  });

  it('gives the same schedule back', () => {
    const read = readSchedule(BASICS.schedule);
    expect(read.ok && readSchedule(writeSchedule(read.value))).toEqual(read);
    expect(readSchedule('25:00 Never')).toMatchObject({ ok: false });
  });

  it('names adults with what they do, and no row that is empty', () => {
    expect(readAdults({ adult1Name: 'K. Marsh', adult1Phone: '+44 1 23', adult1Parts: ['leads', 'may-stop'], adult2Name: '', adult2Phone: '' })).toEqual({ ok: true, value: [{ name: 'K. Marsh', phone: '+44 1 23', parts: ['leads', 'may-stop'] }] });
    expect(readAdults({ adult1Name: 'K. Marsh', adult1Phone: 'ask her', adult3Parts: 'drives' })).toMatchObject({ ok: false, faults: [{ field: 'adult1Phone' }, { field: 'adult1Parts' }, { field: 'adult3Name' }] });
  });
});

describe('packs that are chosen', () => {
  const register = ['a', 'b', 'c', 'd'].map((id) => ({ id, label: `W-0${id}`, key: `w-0${id}`, ready: id !== 'd' }));
  const key = (label: string): string => label.toLowerCase();
  const choose = (before: readonly string[], given: object) => choosePacks(before, { shown: [], packs: [], typed: '', also: 'none', ...given }, register, key);

  it('stay when the list did not show them, and go when it did and they are not ticked', () => {
    expect(choose(['a', 'b'], { shown: ['b', 'c'], packs: ['c'] })).toEqual({ ok: true, value: ['a', 'c'] });
  });

  it('are found by a typed label and by the address of a square code', () => {
    expect(choose([], { typed: 'w-0A\nhttps://school.example/packs/0190aaaa-0000-7000-8000-000000000000' })).toMatchObject({ ok: false });
    expect(choose([], { typed: 'w-0A, W-0c' })).toEqual({ ok: true, value: ['a', 'c'] });
  });

  it('are all that are ready of those shown, and no other', () => {
    expect(choose([], { shown: ['b', 'd'], also: 'ready' })).toEqual({ ok: true, value: ['b'] });
  });
});

describe('a pack that is added by its label', () => {
  const pack = (id: string, given: object = {}) => ({ id, label: id.toUpperCase(), key: id, ready: true, here: true, stays: null, ...given });
  const register = [pack('w-01'), pack('w-02'), pack('w-03', { ready: false }), pack('w-04', { stays: 'is isolated and does not go along' }), pack('w-05', { here: false, stays: 'was handed over' })];
  const add = (before: readonly string[], word: string) => addByLabel(before, word, register, (label) => label.toLowerCase());

  it('stands after those that were there, with how many there are of those still here', () => {
    expect(add(['w-02'], 'W-01')).toEqual({ ok: true, value: ['w-02', 'w-01'], said: 'W-01 added, 2 of 4.' });
    expect(add([], 'w-03')).toMatchObject({ ok: true, said: 'W-03 added, 1 of 4. Not ready yet: look at its last check.' });
  });

  it.each([
    ['is on the list already', ['w-01'], 'w-01', 'W-01 is on the list already, 1 of 4.'],
    ['is not known', [], 'w-09', 'Your register has no pack with this label. Nothing was added.'],
    ['stays here', [], 'w-04', 'W-04 is isolated and does not go along. It was not added.'],
    ['was isolated after it was chosen', ['w-04'], 'w-04', 'W-04 is isolated and does not go along. It is still on the list: untick it and save.'],
    ['has left', [], 'w-05', 'W-05 was handed over. It was not added.'],
  ])('is refused in words when it %s', (_, before, word, message) => {
    expect(add(before, word)).toEqual({ ok: false, faults: [{ field: 'label', message }] });
  });
});

describe('the way of an event', () => {
  const standing = (given: Partial<EventStanding> = {}): EventStanding => ({ state: 'with-officer', preparerId: 'kim', preparerSigned: true, officerId: 'rowan', ...given });

  it('is signed by two people, whoever they are', () => {
    expect(signAsOfficer(standing(), 'rowan', [])).toEqual({ ok: true, to: 'signed' });
    expect(signAsOfficer(standing({ preparerId: 'rowan' }), 'rowan', [])).toMatchObject({ ok: false });
    expect(signAsOfficer(standing(), 'other', [])).toMatchObject({ ok: false });
    expect(signAsOfficer(standing({ preparerSigned: false }), 'rowan', [])).toMatchObject({ ok: false });
    expect(signAsOfficer(standing(), 'rowan', ['No pack is chosen.'])).toMatchObject({ ok: false });
  });

  it('is handed over by its preparer alone, once more when the file was changed', () => {
    expect(submit(standing({ state: 'draft' }), 'kim')).toEqual({ ok: true, to: 'with-officer' });
    expect(submit(standing({ state: 'draft' }), 'rowan')).toMatchObject({ ok: false });
    expect(submit(standing(), 'kim')).toMatchObject({ ok: false });
    expect(submit(standing({ preparerSigned: false }), 'kim')).toMatchObject({ ok: true });
  });

  it('is judged by nobody who prepared it', () => {
    expect(sendBack(standing(), 'kim', 'too many packs')).toMatchObject({ ok: false });
    expect(sendBack(standing(), 'rowan', ' ')).toMatchObject({ ok: false });
    expect(sendBack(standing(), 'rowan', 'too many packs')).toEqual({ ok: true, to: 'returned' });
    expect(acceptLine(standing(), 'kim', { mayBeAccepted: true, open: true })).toMatchObject({ ok: false });
    expect(acceptLine(standing(), 'rowan', { mayBeAccepted: false, open: true })).toMatchObject({ ok: false });
    expect(acceptLine(standing(), 'rowan', null)).toMatchObject({ ok: false });
    expect(acceptLine(standing(), 'rowan', { mayBeAccepted: true, open: true })).toEqual({ ok: true, to: 'with-officer' });
  });

  it('ends with a reason, and only what was signed is withdrawn or opened again', () => {
    for (const state of EVENT_STATES) {
      expect(withdraw(standing({ state }), 'moved').ok).toBe(state === 'signed');
      expect(reopen(standing({ state })).ok).toBe(state === 'signed');
      expect(cancel(standing({ state }), 'snow').ok).toBe(state !== 'cancelled');
    }
    expect(withdraw(standing({ state: 'signed' }), '').ok).toBe(false);
  });
});

describe('links', () => {
  const NOW = new Date('2026-11-25T12:00:00Z');
  const link = { purpose: 'see-document' as const, expiresAt: linkEnd(NOW, 3), revokedAt: null, eventState: 'withdrawn' as const };

  it('work until they end or are taken back, whatever became of the file', () => {
    expect(whyEnded(link, 'see-document', NOW)).toBeNull();
    expect(whyEnded(link, 'see-document', new Date('2026-11-28T12:00:00Z'))).toContain('ended');
    expect(whyEnded({ ...link, revokedAt: NOW }, 'see-document', NOW)).toContain('taken back');
    expect(whyEnded(null, 'see-document', NOW)).toContain('not one of ours');
  });

  it('open nothing that they are not for, and describe no venue once the file has gone on', () => {
    expect(whyEnded(link, 'describe-venue', NOW)).toContain('not one of ours');
    expect(whyEnded({ ...link, purpose: 'describe-venue' }, 'describe-venue', NOW)).toContain('nothing can be changed');
    expect(whyEnded({ ...link, purpose: 'describe-venue', eventState: 'returned' }, 'describe-venue', NOW)).toBeNull();
  });

  it('say the worst of a file first, and show none that was taken back', () => {
    const good = { withdrawnOn: null, withdrawnReason: null, replacedOn: null, endedOn: null, suspendedOn: null, assessmentGone: false };
    expect(fileStanding(good)).toMatchObject({ tone: 'good', shown: true });
    expect(fileStanding({ ...good, withdrawnOn: '1 December', withdrawnReason: 'Hall closed', endedOn: '5 December' })).toMatchObject({ tone: 'stop', shown: false, heading: 'Withdrawn: this file is no longer in force' });
    expect(fileStanding({ ...good, replacedOn: '1 December' })).toMatchObject({ tone: 'stop', shown: false });
    expect(fileStanding({ ...good, suspendedOn: '1 December' })).toMatchObject({ tone: 'stop', shown: true });
    expect(fileStanding({ ...good, assessmentGone: true })).toMatchObject({ tone: 'doubt', shown: true });
  });
});

describe('the list', () => {
  const event = (title: string, day: string, given: Partial<ListedEvent> = {}): ListedEvent => ({ id: title, title, state: 'draft', startsAt: new Date(`${day}T09:00:00Z`), endsAt: new Date(`${day}T17:00:00Z`), siteName: 'Riverside', packs: 18, teams: 2, people: 16, preparedByName: 'K. Marsh', ...given });
  const all = [event('Spring cup', '2026-03-05', { state: 'signed' }), event('Winter cup', '2027-01-10'), event('Autumn cup', '2026-12-05', { siteName: 'Own hall' })];
  const NOW = new Date('2026-11-25T12:00:00Z');
  const titles = (query: object) => searchEvents(all, EventQuerySchema.parse(query), NOW).map(({ title }) => title);

  it('shows the next first and the past last, by words, state and time', () => {
    expect(titles({})).toEqual(['Autumn cup', 'Winter cup', 'Spring cup']);
    expect(titles({ q: 'cup riverside' })).toEqual(['Winter cup', 'Spring cup']);
    expect(titles({ state: 'signed' })).toEqual(['Spring cup']);
    expect(titles({ when: 'coming', state: 'nonsense' })).toEqual(['Autumn cup', 'Winter cup']);
  });
});
