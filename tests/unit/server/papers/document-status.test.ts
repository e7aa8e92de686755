import { describe, expect, it } from 'vitest';
import type { DocumentRecord } from '@/lib/db/documents/document-status';
import { statusOf } from '@/lib/server/papers/document-status';
import { numberInWords } from '@/lib/server/papers/number-words';
import { unsignedInWords } from '@/lib/server/papers/unsigned-words';

const [early, late] = [new Date('2026-10-12T08:00:00Z'), new Date('2026-11-20T08:00:00Z')];
const now = new Date('2026-11-25T12:00:00Z');
const record: DocumentRecord = {
  number: 'SB-7F2K-Q9XM', title: 'Paper', kind: 'assessment', schoolName: 'Heron Weir', timeZone: 'Europe/London', locale: 'en-GB', state: 'signed', createdAt: early,
  replacedAt: null, withdrawnAt: null, supersededAt: null, reviewBy: '2027-07-31', suspendedAt: null, suspendedWhy: null, reviewAskedAt: null, eventEndsAt: null,
};
const statusWith = (change: Partial<DocumentRecord>, at = now) => statusOf({ ...record, ...change }, at).state;
const day = (date: Date): string => date.toISOString().slice(0, 10);

describe('the status of a paper', () => {
  it('is in force until its last day, and that day is the school’s', () => {
    expect(statusOf(record, now)).toEqual({ state: 'in-force', until: new Date('2027-07-31T12:00:00Z') });
    expect(statusWith({ reviewBy: '2026-11-25' })).toBe('in-force');
    expect(statusWith({ reviewBy: '2026-11-24' })).toBe('ended');
    // Half past noon UTC is already the next day in Auckland and not yet in London.
    const evening = new Date('2026-11-25T12:30:00Z');
    expect(statusWith({ reviewBy: '2026-11-25', timeZone: 'Pacific/Auckland' }, evening)).toBe('ended');
    expect(statusWith({ reviewBy: '2026-11-25' }, evening)).toBe('in-force');
  });

  it('says the worst of what is true: what was withdrawn stays so, what was replaced is not merely suspended', () => {
    const all = { withdrawnAt: late, supersededAt: early, replacedAt: early, suspendedAt: early, suspendedWhy: 'smoke', reviewAskedAt: early, reviewBy: '2026-01-01' };
    expect(statusWith(all)).toBe('withdrawn');
    expect(statusWith({ ...all, withdrawnAt: null })).toBe('superseded');
    expect(statusWith({ ...all, withdrawnAt: null, supersededAt: null })).toBe('superseded');
    expect(statusWith({ ...all, withdrawnAt: null, supersededAt: null, replacedAt: null })).toBe('suspended');
    expect(statusWith({ reviewAskedAt: early, reviewBy: '2026-01-01' })).toBe('ended');
    expect(statusWith({ reviewAskedAt: early })).toBe('under-review');
  });

  it('of an event is in force until the event is over', () => {
    const event = { kind: 'event', reviewBy: null, eventEndsAt: new Date('2026-11-25T16:00:00Z') };
    expect(statusOf({ ...record, ...event }, now)).toEqual({ state: 'in-force', until: event.eventEndsAt });
    expect(statusWith(event, new Date('2026-11-25T16:00:01Z'))).toBe('ended');
    expect(statusWith({ ...event, withdrawnAt: early })).toBe('withdrawn');
  });

  it('of an incident is a record, and under review once the incident is open again', () => {
    const incident = { kind: 'incident', reviewBy: null };
    expect(statusOf({ ...record, ...incident }, now)).toEqual({ state: 'in-force', about: 'incident' });
    expect(statusOf({ ...record, ...incident, reviewAskedAt: late }, now)).toEqual({ state: 'under-review', since: late, about: 'incident' });
    expect(statusWith({ ...incident, replacedAt: late, reviewAskedAt: late })).toBe('superseded');
  });

  it('is not known of what the records do not have', () => { expect(statusOf(null, now)).toEqual({ state: 'no-record' }); });
});

describe('the number of a printed page', () => {
  const said = (change: Partial<DocumentRecord>) => { const one = { ...record, ...change }; return numberInWords({ state: one.state, status: statusOf(one, now) }, day); };

  it('looks good only when the paper is signed by both and in force', () => {
    expect(said({}).tone).toBe('good');
    for (const change of [{ state: 'part-signed' }, { suspendedAt: early }, { supersededAt: early }, { withdrawnAt: early }, { reviewBy: '2026-01-01' }]) expect(said(change).tone).toBe('stop');
    expect(said({ reviewAskedAt: early }).tone).toBe('doubt');
    expect(numberInWords(null, day)).toMatchObject({ tone: 'stop', heading: 'No paper of this number' });
  });

  it('calls no incident and no unsigned card in force, and looks good of neither once it was replaced', () => {
    const incident = { kind: 'incident', reviewBy: null };
    expect(said(incident)).toMatchObject({ tone: 'good', heading: expect.not.stringContaining('in force') as string });
    expect(said({ ...incident, reviewAskedAt: late }).sentence).toContain('opened again');
    const card = { kind: 'response-card', state: 'made', reviewBy: null, eventEndsAt: late };
    expect(said({ ...card, eventEndsAt: new Date('2026-12-01T16:00:00Z') })).toMatchObject({ tone: 'good', heading: 'The paper of this number is the latest' });
    for (const change of [card, { ...card, replacedAt: early }, { ...card, withdrawnAt: early }]) expect(said(change).tone).toBe('stop');
    expect(said({ state: 'part-signed', reviewAskedAt: early }).tone).toBe('stop');
  });

  it('never says that the page in hand is right', () => {
    expect(said({}).sentence).toContain('Check the file itself');
    expect(said({ suspendedAt: early, suspendedWhy: 'Smoke on Friday' }).sentence).toContain('Smoke on Friday');
  });
});

describe('a file that nobody signs', () => {
  it('never looks as good as a signed one, and stops once it is replaced, withdrawn or over', () => {
    expect(unsignedInWords({ state: 'in-force' }, day)).toMatchObject({ tone: 'doubt', heading: 'Unchanged, made without a signature' });
    for (const state of ['superseded', 'withdrawn', 'ended'] as const) expect(unsignedInWords({ state, since: late }, day)).toMatchObject({ tone: 'stop', heading: 'Unchanged, no longer in force' });
  });
});
