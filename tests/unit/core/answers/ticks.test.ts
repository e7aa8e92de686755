import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { Content, Question, TickLine } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Answer } from '@/lib/core/document';

const line = (id: string, control: string, more: Partial<TickLine> = {}): TickLine => ({ id, label: id, sets: { controls: { [control]: 'in place' }, inputs: {} }, partly: { label: 'some', state: 'partly' }, ...more });
const ticks: Question = {
  id: 'routine-charger', section: 'routine', text: 'x', why: 'x', good: 'x', notSure: true, source: 'our judgement',
  kind: 'ticks', unticked: 'absent', acceptsListForm: true,
  options: [line('balance', 'balance-charger'), line('sound', 'charge-limits-set', { newIn: 2 }), line('card', 'labelled-settings', { fromList: 'not sure' }), line('rate', 'gentle-rate', { partly: { label: 'some', state: 'absent' } })],
};
const content: Content = { ...edition1, questions: [ticks] };
const statesOf = (answer: Answer | undefined, notSureTicks: readonly string[] = []) => {
  const { states } = resolveVenue(content, { id: 'x', title: 'x', answers: answer === undefined ? {} : { [ticks.id]: answer }, notSureTicks: { [ticks.id]: notSureTicks } });
  return ['balance-charger', 'charge-limits-set', 'labelled-settings', 'gentle-rate'].map((control) => states.get(control));
};

describe('a page of ticks', () => {
  it('takes each line by itself, and a blank line as not sure, never as no', () => {
    expect(statesOf({ balance: 'yes', sound: 'no', rate: 'partly' })).toEqual(['in place', 'absent', 'not sure', 'absent']);
    expect(statesOf({ balance: 'partly', sound: 'not sure', card: 'yes' })).toEqual(['partly', 'not sure', 'in place', 'not sure']);
  });

  it('reads the list of an earlier edition, and nothing into it that was not asked then', () => {
    expect(statesOf(['balance', 'card'])).toEqual(['in place', 'not sure', 'not sure', 'absent']);
    expect(statesOf([], ['rate'])).toEqual(['absent', 'not sure', 'absent', 'not sure']);
  });

  it('is not sure throughout when it is not answered at all', () => {
    expect(statesOf(undefined)).toEqual(['not sure', 'not sure', 'not sure', 'not sure']);
    expect(statesOf('not sure')).toEqual(['not sure', 'not sure', 'not sure', 'not sure']);
  });
});

describe('a room asked by its lengths', () => {
  const room: Question = {
    id: 'room-size', section: 'room', text: 'x', why: 'x', good: 'x', notSure: true, source: 'our judgement', kind: 'number',
    fields: [
      { input: 'chargingVolume', label: 'volume', unit: 'm³', min: 4, max: 50000, earlier: { replaces: ['storageClearHeight', 'clearHeight'] } },
      { input: 'clearHeight', label: 'height', unit: 'm', min: 0, max: 20 },
      { input: 'storageClearHeight', label: 'height', unit: 'm', min: 0, max: 20 },
    ],
  };
  const assumedOf = (answer: Answer) => resolveVenue({ ...edition1, questions: [room] }, { id: 'x', title: 'x', answers: { 'room-size': answer } }).assumedInputs.map((one) => one.input);

  it('wants no lengths where the volume was given, and no volume where the lengths are', () => {
    expect(assumedOf({ chargingVolume: 90 })).toEqual([]);
    expect(assumedOf({ clearHeight: 3, storageClearHeight: 3 })).toEqual([]);
    expect(assumedOf({ clearHeight: 3 })).toEqual(['storageClearHeight']);
  });
});
