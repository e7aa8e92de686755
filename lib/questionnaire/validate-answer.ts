import type { AnswerOption, NumberField, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { listed, quoted, rangeInWords, sayValue } from './say-value';

/** What is wrong with one answer, where in the answer, and what would be right. */
export interface AnswerFault {
  /** keys and indexes from the answer down; empty for the answer as a whole */
  readonly path: readonly (string | number)[];
  readonly problem: string;
  readonly expected: string;
}
export type AnswerCheck = { readonly ok: true; readonly answer: Answer } | { readonly ok: false; readonly faults: readonly AnswerFault[] };

export const NOT_SURE = 'not sure';
const CONTROL_CHARACTER = /\p{Cc}/u;

/**
 * Whether a value from outside is an answer that this question can take.
 * @param raw anything: option id, list of option ids, numbers by input, text, or "not sure"
 * @returns the answer, or every fault with what would be right
 */
export function validateAnswer(question: Question, raw: unknown): AnswerCheck {
  if (raw === NOT_SURE && question.notSure) return { ok: true, answer: NOT_SURE };
  if (question.kind === 'choice') return checkChoice(question.options, raw, question.notSure);
  if (question.kind === 'multi' || question.kind === 'ticks') return checkList(question.options, raw);
  if (question.kind === 'number') return checkNumbers(question.fields, raw);
  return checkText(question.field.maxLength, raw, question.notSure);
}

const idsOf = (options: readonly AnswerOption[]): readonly string[] => options.map((option) => option.id);
const wrong = (...faults: readonly AnswerFault[]): AnswerCheck => ({ ok: false, faults });

function checkChoice(options: readonly AnswerOption[], raw: unknown, notSure: boolean): AnswerCheck {
  const ids = idsOf(options);
  if (typeof raw === 'string' && ids.includes(raw)) return { ok: true, answer: raw };
  const expected = `one of ${listed(notSure ? [...ids, NOT_SURE] : ids)}`;
  return wrong({ path: [], problem: sayValue(raw), expected });
}

function checkList(options: readonly AnswerOption[], raw: unknown): AnswerCheck {
  const ids = idsOf(options);
  if (!Array.isArray(raw)) return wrong({ path: [], problem: sayValue(raw), expected: `a list of any of ${listed(ids)}, [] for none of them, or "${NOT_SURE}"` });
  const ticked: readonly unknown[] = raw;
  const faults = ticked.flatMap((item, at): AnswerFault[] => {
    if (typeof item !== 'string' || !ids.includes(item)) return [{ path: [at], problem: sayValue(item), expected: `one of ${listed(ids)}` }];
    return ticked.indexOf(item) < at ? [{ path: [at], problem: `is ${quoted(item)} a second time`, expected: 'each option at most once' }] : [];
  });
  return faults.length > 0 ? wrong(...faults) : { ok: true, answer: ticked.filter((item) => typeof item === 'string') };
}

function checkNumbers(fields: readonly NumberField[], raw: unknown): AnswerCheck {
  const names = listed(fields.map((field) => field.input));
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return wrong({ path: [], problem: sayValue(raw), expected: `an object with numbers for ${names}, or "${NOT_SURE}"` });
  }
  const faults: AnswerFault[] = [];
  const numbers = new Map<string, number>();
  for (const [input, value] of Object.entries(raw)) {
    const field = fields.find((candidate) => candidate.input === input);
    if (field === undefined) faults.push({ path: [input], problem: 'is not asked by this question', expected: `only ${names}` });
    else if (typeof value === 'number' && value >= field.min && value <= field.max) numbers.set(input, value);
    else faults.push({ path: [input], problem: sayValue(value), expected: rangeInWords(field.min, field.max, field.unit) });
  }
  return faults.length > 0 ? wrong(...faults) : { ok: true, answer: Object.fromEntries(numbers) };
}

/** Blanks alone, or the words "not sure", would pass for a telephone number: they are refused, an empty text is not. */
function checkText(maxLength: number, raw: unknown, notSure: boolean): AnswerCheck {
  const expected = `one line of text of at most ${maxLength} characters${notSure ? `, or "${NOT_SURE}"` : ''}`;
  if (typeof raw !== 'string' || raw === NOT_SURE) return wrong({ path: [], problem: sayValue(raw), expected });
  if (raw.length > maxLength) return wrong({ path: [], problem: `has ${raw.length} characters`, expected });
  if (CONTROL_CHARACTER.test(raw)) return wrong({ path: [], problem: 'holds a line break or another control character', expected });
  if (raw !== '' && raw.trim() === '') return wrong({ path: [], problem: 'holds nothing but blanks', expected });
  return { ok: true, answer: raw };
}
