import { describe, expect, it } from 'vitest';
import { eventItems } from '@/lib/today/event-items';
import type { EventFact } from '@/lib/today/facts';

const event = (given: Partial<EventFact>): EventFact => ({ id: 'cup', title: 'Autumn cup', state: 'draft', preparer: 'K. Marsh', isMine: false, isForMe: false, preparerSigned: false, daysLeft: 10, ...given });
const of = (given: Partial<EventFact>) => eventItems([event(given)]).map(({ urgency, id }) => `${urgency} ${id}`);

describe('events on Today', () => {
  it('call the officer to a file that waits for them, and nobody else', () => {
    expect(of({ state: 'with-officer', isForMe: true, preparerSigned: true })).toEqual(['now event-check-cup']);
    expect(of({ state: 'with-officer', preparerSigned: true })).toEqual([]);
    expect(of({ state: 'with-officer', isForMe: true })).toEqual([]);
  });

  it('call the preparer to what came back or is to be signed again', () => {
    expect(of({ state: 'returned', isMine: true })).toEqual(['now event-returned-cup']);
    expect(of({ state: 'with-officer', isMine: true })).toEqual(['now event-again-cup']);
    expect(of({ state: 'with-officer', isMine: true, preparerSigned: true })).toEqual([]);
  });

  it('remind the preparer of a draft two weeks before the day, not sooner', () => {
    expect(of({ isMine: true, daysLeft: 14 })).toEqual(['soon event-draft-cup']);
    expect(of({ isMine: true, daysLeft: 15 })).toEqual([]);
    expect(of({ daysLeft: 2 })).toEqual([]);
    expect(of({ state: 'signed', isMine: true, daysLeft: 2 })).toEqual([]);
  });
});
