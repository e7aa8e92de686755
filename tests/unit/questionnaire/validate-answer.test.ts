import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Question } from '@/lib/content/model';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';

const question = (id: string, content = edition1): Question => {
  const found = content.questions.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
};

const TAKEN: [string, unknown][] = [
  ['table-surface', 'partly'],
  ['table-surface', 'not sure'],
  ['people-kit', []],
  ['people-kit', ['caps', 'tidy']],
  ['people-kit', 'not sure'],
  ['room-leave', { chargingEvac: 15, exits: 20 }],
  ['room-leave', { exits: 0 }],
  ['room-leave', {}],
  ['response-number', ''],
  ['response-number', 'on the card by the door'],
];

const REFUSED: [string, unknown, string, string][] = [
  ['table-surface', 'marble', 'is the text "marble"', 'one of "yes", "partly", "no", "not sure"'],
  ['table-surface', ['yes'], 'is a list', 'one of "yes", "partly", "no", "not sure"'],
  ['table-surface', undefined, 'is missing', 'one of "yes", "partly", "no", "not sure"'],
  ['room-where', 'not sure', 'is the text "not sure"', 'one of "indoor", "outdoor"'],
  ['electric-kit', 'sum', 'is the text "sum"', 'a list of any of "sum", "wall", "guard", "switch", [] for none of them, or "not sure"'],
  ['electric-kit', ['sum', 'sum'], 'is "sum" a second time', 'each option at most once'],
  ['electric-kit', ['plug'], 'is the text "plug"', 'one of "sum", "wall", "guard", "switch"'],
  ['room-leave', { chargingEvac: 14.9 }, 'is 14.9', 'a number from 15 to 1,800 s'],
  ['room-leave', { chargingEvac: '90' }, 'is the text "90"', 'a number from 15 to 1,800 s'],
  ['room-leave', { chargingEvac: Number.NaN }, 'is NaN', 'a number from 15 to 1,800 s'],
  ['room-leave', { doors: 2 }, 'is not asked by this question', 'only "chargingEvac", "exits"'],
  ['room-leave', [90], 'is a list', 'an object with numbers for "chargingEvac", "exits", or "not sure"'],
  ['response-number', '   ', 'holds nothing but blanks', 'one line of text of at most 200 characters, or "not sure"'],
  ['response-number', 'a\u001b[2J', 'holds a line break or another control character', 'one line of text of at most 200 characters, or "not sure"'],
  ['response-number', 'x'.repeat(201), 'has 201 characters', 'one line of text of at most 200 characters, or "not sure"'],
  ['response-number', 112, 'is 112', 'one line of text of at most 200 characters, or "not sure"'],
];

const TAKEN_2: [string, unknown][] = [
  ['people-kit', { caps: 'yes', tidy: 'partly', guard: 'no', warning: 'not sure' }],
  ['people-kit', {}],
  ['people-kit', []],
  ['people-kit', ['caps', 'tidy']],
  ['room-exits', 'partly'],
  ['room-size', { chargingVolume: 180 }],
  ['travel-trips', { roadTrips: 3, warmTrips: 3 }],
  ['travel-trips', { warmTrips: 30 }],
];

const REFUSED_2: [string, unknown, string, string][] = [
  ['damaged-keep', { sand: 'mostly' }, 'is the text "mostly"', 'one of "yes", "partly", "no", "not sure"'],
  ['damaged-keep', { sandd: 'yes' }, 'is not a line of this question', '"sand" was probably meant'],
  ['damaged-keep', 'yes', 'is the text "yes"', 'an object with "yes", "partly", "no" or "not sure" for any of "sand", "mark", or "not sure" for them all'],
  ['damaged-keep', null, 'is null', 'an object with "yes", "partly", "no" or "not sure" for any of "sand", "mark", or "not sure" for them all'],
  ['store-keep', ['together'], 'is the text "together", a line that no list had', 'a word for each line instead of a list, such as {"together": "yes"}'],
  ['store-keep', ['cool', 'cool'], 'is "cool" a second time', 'each option at most once'],
  ['room-exits', 'two', 'is the text "two"', 'one of "yes", "one", "no", "not sure"'],
  ['travel-trips', { roadTrips: 3, warmTrips: 4 }, 'is 4, more than the 3 trips by road it is a part of', 'a number from 0 to 3, the trips by road'],
];

describe('an answer to the second edition', () => {
  it.each(TAKEN_2)('to %s is taken: %j', (id, raw) => {
    expect(validateAnswer(question(id, edition2), raw)).toEqual({ ok: true, answer: raw });
  });

  it.each(REFUSED_2)('to %s is refused: %j', (id, raw, problem, expected) => {
    const check = validateAnswer(question(id, edition2), raw);
    expect(check.ok ? [] : check.faults.map((fault) => [fault.problem, fault.expected])).toEqual([[problem, expected]]);
  });
});

describe('an answer', () => {
  it.each(TAKEN)('to %s is taken: %j', (id, raw) => {
    expect(validateAnswer(question(id), raw)).toEqual({ ok: true, answer: raw });
  });

  it.each(REFUSED)('to %s is refused: %j', (id, raw, problem, expected) => {
    const check = validateAnswer(question(id), raw);
    expect(check.ok ? [] : check.faults.map((fault) => [fault.problem, fault.expected])).toEqual([[problem, expected]]);
  });

  it('has every fault named at once, each with its place', () => {
    const check = validateAnswer(question('travel-trips'), { roadTrips: -1, airTrips: 51, boats: 1 });
    expect(check.ok ? [] : check.faults.map(({ path }) => path)).toEqual([['roadTrips'], ['airTrips'], ['boats']]);
  });

  it('of any kind at all is taken or refused, never thrown at', () => {
    fc.assert(fc.property(fc.constantFrom(...edition1.questions, ...edition2.questions), fc.anything(), (asked, raw) => {
      const check = validateAnswer(asked, raw);
      expect(check.ok || check.faults.length > 0).toBe(true);
    }));
  });
});
