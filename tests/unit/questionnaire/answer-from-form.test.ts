import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { Question } from '@/lib/content/model';
import { ANSWER_FIELD, answerFromForm, NONE_FIELD, NOT_SURE_TICK_FIELD } from '@/lib/questionnaire/answer-from-form';
import { readTypedNumber } from '@/lib/questionnaire/read-number';

const question = (id: string): Question => {
  const found = edition1.questions.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
};
const form = (...fields: [string, string][]): FormData => {
  const data = new FormData();
  for (const [name, value] of fields) data.append(name, value);
  return data;
};
const given = (answer: unknown, notSureTicks: string[] = []) => ({ ok: true, answer, notSureTicks });

describe('a page that was sent in', () => {
  it.each<[string, string, [string, string][], unknown]>([
    ['a choice', 'table-surface', [['answer', 'partly']], given('partly')],
    ['nothing chosen', 'table-surface', [], given(undefined)],
    ['not sure', 'room-leave', [['answer', 'not sure'], ['exits', '2']], given('not sure')],
    ['ticks', 'people-kit', [['answer', 'caps'], ['answer', 'tidy']], given(['caps', 'tidy'])],
    ['ticks, one not known', 'people-kit', [[ANSWER_FIELD, 'caps'], [NOT_SURE_TICK_FIELD, 'tidy']], given(['caps'], ['tidy'])],
    ['none of these', 'people-kit', [[NONE_FIELD, 'yes']], given([])],
    ['no tick at all', 'people-kit', [], given(undefined)],
    ['numbers, one left empty', 'room-leave', [['chargingEvac', ' 90 '], ['exits', '']], given({ chargingEvac: 90 })],
    ['numbers left empty', 'room-leave', [['chargingEvac', ''], ['exits', ' ']], given(undefined)],
    ['a decimal comma', 'table-distances', [['personDistance', '1,5']], given({ personDistance: 1.5 })],
    ['text', 'response-number', [['answer', ' by the oak ']], given('by the oak')],
  ])('gives an answer: %s', (_, id, fields, expected) => {
    expect(answerFromForm(question(id), form(...fields))).toEqual(expected);
  });

  it.each<[string, string, [string, string][], { field: string; message: string }[]]>([
    ['a choice nobody offered', 'room-where', [['answer', 'not sure']], [{ field: 'answer', message: 'Enter one of "indoor", "outdoor"' }]],
    ['two wrong numbers', 'room-leave', [['chargingEvac', '5'], ['exits', 'two']], [
      { field: 'exits', message: 'Enter a number in digits, such as 12 or 0.5' },
      { field: 'chargingEvac', message: 'Enter a number from 15 to 1,800 s' },
    ]],
    ['a tick that is also not known', 'people-kit', [['answer', 'caps'], ['notSureTick', 'caps']], [{ field: 'caps', message: 'Tick it, or say that you are not sure, not both' }]],
    ['an option not known to the question', 'people-kit', [['notSureTick', 'hats']], [{ field: 'answer', message: 'Enter one of "caps", "case", "tidy", "guard", "warning"' }]],
  ])('names the field: %s', (_, id, fields, faults) => {
    expect(answerFromForm(question(id), form(...fields))).toEqual({ ok: false, faults });
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
