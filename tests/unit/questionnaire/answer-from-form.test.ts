import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Content, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { answerFromForm } from '@/lib/questionnaire/answer-from-form';
import { withEarlier } from '@/lib/questionnaire/earlier-fields';
import { formValues } from '@/lib/questionnaire/form-values';
import { partsAboveWhole } from '@/lib/questionnaire/held-parts';
import { askedFields } from '@/lib/questionnaire/number-boxes';
import { numbersIn } from '@/lib/questionnaire/number-form';
import { pageFromForm } from '@/lib/questionnaire/page-from-form';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { linesSaid } from '@/lib/questionnaire/ticks';
import { arbitraryAnswer } from '@/tests/support/arbitrary-document';

const find = (content: Content, id: string): Question => {
  const found = content.questions.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
};
const form = (...fields: (readonly [string, string])[]): FormData => {
  const data = new FormData();
  for (const [name, value] of fields) data.append(name, value);
  return data;
};
const given = (answer: unknown, notSureTicks: string[] = []) => ({ ok: true, answer, notSureTicks });
type Case = [string, string, (readonly [string, string])[], unknown];

describe('a question that was sent in', () => {
  it.each<Case>([
    ['a choice', 'table-surface', [['table-surface', 'metal']], given('metal')],
    ['nothing chosen', 'table-surface', [], given(undefined)],
    ['the fields of another question beside it', 'table-surface', [['room-off-exit', 'yes'], ['table-clear.x', '1']], given(undefined)],
    ['not sure', 'room-leave', [['room-leave', 'not sure'], ['room-leave.chargingEvac-s', '40']], given('not sure')],
    ['lines, some left blank', 'people-kit', [['people-kit.caps', 'yes'], ['people-kit.tidy', 'partly'], ['people-kit.guard', 'not sure'], ['people-kit.case', '']], given({ caps: 'yes', tidy: 'partly', guard: 'not sure' })],
    ['lines, the rest not sure', 'damaged-keep', [['damaged-keep', 'not sure'], ['damaged-keep.mark', 'no']], given({ sand: 'not sure', mark: 'no' })],
    ['no line at all', 'people-kit', [], given(undefined)],
    ['a time in two boxes', 'room-leave', [['room-leave.chargingEvac-min', '1'], ['room-leave.chargingEvac-s', '30']], given({ chargingEvac: 90 })],
    ['a time in one of them', 'room-leave', [['room-leave.chargingEvac-min', ''], ['room-leave.chargingEvac-s', ' 45 ']], given({ chargingEvac: 45 })],
    ['so many of ten', 'team-use', [['team-use.crashShare', '3'], ['team-use.chargesPerPackSession', '']], given({ crashShare: 0.3 })],
    ['numbers left empty', 'room-size', [['room-size.chargingLength', ''], ['room-size.chargingWidth', ' ']], given(undefined)],
    ['a decimal comma', 'table-distances', [['table-distances.personDistance', '1,5']], given({ personDistance: 1.5 })],
    ['text', 'response-meeting', [['response-meeting', ' by the oak ']], given('by the oak')],
    ['text that was emptied', 'response-meeting', [['response-meeting', ' ']], given(undefined)],
  ])('gives an answer: %s', (_, id, fields, expected) => {
    expect(answerFromForm(find(edition2, id), form(...fields))).toEqual(expected);
  });

  it.each<Case>([
    ['ticks', 'people-kit', [['people-kit', 'caps'], ['people-kit', 'tidy']], given(['caps', 'tidy'])],
    ['ticks, one not known', 'people-kit', [['people-kit', 'caps'], ['people-kit.not-sure', 'tidy']], given(['caps'], ['tidy'])],
    ['none of these', 'people-kit', [['people-kit.none', 'yes']], given([])],
    ['no tick at all', 'people-kit', [], given(undefined)],
  ])('gives an answer in the list form of the first edition: %s', (_, id, fields, expected) => {
    expect(answerFromForm(find(edition1, id), form(...fields))).toEqual(expected);
  });

  it.each<[string, Content, string, (readonly [string, string])[], { field: string; message: string }[]]>([
    ['a choice nobody offered', edition2, 'room-where', [['room-where', 'not sure']], [{ field: 'room-where', message: 'Enter one of "indoor", "outdoor", "corridor"' }]],
    ['an unknown word, at its line', edition2, 'people-kit', [['people-kit.caps', 'maybe'], ['people-kit.tidy', 'yes']], [{ field: 'people-kit.caps', message: 'Choose yes, partly, no or not sure' }]],
    ['two wrong numbers, each at its box', edition2, 'table-distances', [['table-distances.clearHeight', '200'], ['table-distances.personDistance', 'two']], [
      { field: 'table-distances.clearHeight', message: 'Enter a number from 0 to 20 m' },
      { field: 'table-distances.personDistance', message: 'Enter a number in digits, such as 12 or 0.5' },
    ]],
    ['too short a time, at its first box', edition2, 'room-leave', [['room-leave.chargingEvac-s', '5']], [{ field: 'room-leave.chargingEvac-min', message: 'Enter a time from 15 seconds to 30 minutes' }]],
    ['more warm trips than trips', edition2, 'travel-trips', [['travel-trips.roadTrips', '3'], ['travel-trips.warmTrips', '4']], [{ field: 'travel-trips.warmTrips', message: 'Enter a number from 0 to 3, the trips by road' }]],
    ['a tick that is also not known', edition1, 'people-kit', [['people-kit', 'caps'], ['people-kit.not-sure', 'caps']], [{ field: 'people-kit.caps', message: 'Tick it, or say that you are not sure, not both' }]],
    ['an option not known to the question', edition1, 'people-kit', [['people-kit.not-sure', 'hats']], [{ field: 'people-kit', message: 'Enter one of "caps", "case", "tidy", "guard", "warning"' }]],
  ])('names the field: %s', (_, content, id, fields, faults) => {
    expect(answerFromForm(find(content, id), form(...fields))).toEqual({ ok: false, faults });
  });
});

describe('what an earlier edition was answered', () => {
  it('stays while it counts, though no field asks for it', () => {
    const size = find(edition2, 'room-size');
    expect(answerFromForm(size, form(['room-size.chargingLength', '9']), { chargingVolume: 180 })).toEqual(given({ chargingVolume: 180, chargingLength: 9 }));
    const whole = form(['room-size.chargingLength', '9'], ['room-size.chargingWidth', '6'], ['room-size.chargingHeight', '3']);
    expect(answerFromForm(size, whole, { chargingVolume: 180 })).toEqual(given({ chargingLength: 9, chargingWidth: 6, chargingHeight: 3 }));
  });

  it('stays when an option is no longer offered and nothing else was chosen', () => {
    const exits = find(edition2, 'room-exits');
    expect(answerFromForm(exits, form(), 'partly')).toEqual(given('partly'));
    expect(answerFromForm(exits, form(), 'one')).toEqual(given(undefined));
    expect(answerFromForm(exits, form(['room-exits', 'yes']), 'partly')).toEqual(given('yes'));
  });
});

describe('what a form shows', () => {
  it('turns a list of an earlier edition into lines', () => {
    expect(formValues(find(edition2, 'damaged-keep'), ['sand', 'mark'])).toEqual({ 'damaged-keep.sand': 'not sure', 'damaged-keep.mark': 'yes' });
    expect(formValues(find(edition2, 'store-keep'), ['cool'], ['locked'])).toEqual({ 'store-keep.cool': 'yes', 'store-keep.locked': 'not sure' });
  });

  /** What the answer says, whichever way it is written. */
  const meaning = (question: Question, answer: Answer | undefined): unknown => {
    if (question.kind === 'ticks') return linesSaid(question, answer, []);
    if (question.kind === 'text') return answer === '' ? undefined : answer;
    if (question.kind !== 'number' || typeof answer !== 'object') return answer;
    const before = numbersIn(answer);
    const asked = Object.fromEntries(askedFields(question.fields).map(({ input }) => [input, before[input]]));
    const numbers = Object.entries(withEarlier(question.fields, before, asked)).flatMap(([input, value]) => (value === undefined ? [] : [[input, value] as const]));
    return numbers.length === 0 ? undefined : Object.fromEntries(numbers);
  };

  /** Numbers as a person would type them. */
  const withPlainNumbers = (answer: Answer | undefined): Answer | undefined => {
    const numbers = Object.entries(numbersIn(answer)).map(([input, value = 0]) => [input, Number(value.toFixed(6))] as const);
    return numbers.length === 0 ? answer : Object.fromEntries(numbers);
  };

  it('is read back as the answer it was, whatever the question and the answer', () => {
    fc.assert(fc.property(fc.constantFrom(edition1, edition2).chain((content) => fc.constantFrom(...content.questions)).chain((question) => fc.tuple(fc.constant(question), arbitraryAnswer(question))), ([question, any]) => {
      const answer = withPlainNumbers(any);
      // A part that is more than its whole is refused at its field, which has a test of its own.
      fc.pre(partsAboveWhole(numbersIn(answer)).length === 0);
      const fields = Object.entries(formValues(question, answer)).flatMap(([name, value]) => [value].flat().map((one) => [name, one] as const));
      const read = answerFromForm(question, form(...fields), answer);
      expect(read.ok && meaning(question, read.answer)).toEqual(meaning(question, answer));
    }), { numRuns: 500 });
  });
});

describe('a page that was sent in', () => {
  const questions = ['alarm-building', 'response-ready', 'people-kit'].map((id) => find(edition2, id));

  it('replaces what was given anew, takes away what was emptied and leaves the rest', () => {
    const before = { answers: { 'alarm-building': 'no', 'people-kit': ['caps'], 'table-surface': 'yes' }, notSureTicks: { 'people-kit': ['tidy'], 'arena-kit': ['line'] } };
    const read = pageFromForm(questions, form(['alarm-building', 'yes'], ['response-ready.drill', 'yes']), before);
    expect(read).toEqual({ ok: true, answered: { answers: { 'alarm-building': 'yes', 'response-ready': { drill: 'yes' }, 'table-surface': 'yes' }, notSureTicks: { 'arena-kit': ['line'] } } });
  });

  it('names every field of every question, and takes nothing', () => {
    const read = pageFromForm(questions, form(['alarm-building', 'bell'], ['people-kit.caps', 'x']), { answers: {} });
    expect(read.ok ? [] : read.faults.map(({ field }) => field)).toEqual(['alarm-building', 'people-kit.caps']);
  });
});

describe('a typed number', () => {
  it.each([['12', 12], ['0.5', 0.5], ['0,5', 0.5], ['1 200', 1200], ['1\u202f200', 1200], ['-3', -3], ['−3', -3], ['0,125', 0.125]])('%s is %d', (typed, value) => {
    expect(readTypedNumber(typed)).toEqual({ ok: true, value });
  });

  it.each(['', 'NaN', 'Infinity', '1e3', '0x10', '1.2.3', '12 m', '٣'])('%s is not read', (typed) => {
    expect(readTypedNumber(typed)).toMatchObject({ ok: false });
  });

  it('that can be read in two ways is asked about', () => {
    expect(readTypedNumber('1,200')).toEqual({ ok: false, reason: '1,200 can be read in two ways: write 1200, or 1.200 with a point' });
  });
});
