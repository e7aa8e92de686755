import type { AnswerOption, Question } from '@/lib/content/model';
import { type AnswerCheck, NOT_SURE, wrong } from './answer-fault';
import { checkList } from './check-list';
import { checkNumbers } from './check-numbers';
import { checkTicks } from './check-ticks';
import { listed, sayValue } from './say-value';

const CONTROL_CHARACTER = /\p{Cc}/u;

/**
 * Whether a value from outside is an answer that this question can take.
 * @param raw anything: option id, list of option ids, numbers by input, words by line, text, or "not sure"
 * @returns the answer, or every fault with what would be right
 */
export function validateAnswer(question: Question, raw: unknown): AnswerCheck {
  if (raw === NOT_SURE && question.notSure) return { ok: true, answer: NOT_SURE };
  if (question.kind === 'choice') return checkChoice(question.options, raw, question.notSure);
  if (question.kind === 'multi') return checkMulti(question.options, raw);
  if (question.kind === 'ticks') return checkTicks(question, raw);
  if (question.kind === 'number') return checkNumbers(question.fields, raw);
  return checkText(question.field.maxLength, raw, question.notSure);
}

const idsOf = (options: readonly AnswerOption[]): readonly string[] => options.map((option) => option.id);

function checkChoice(options: readonly AnswerOption[], raw: unknown, notSure: boolean): AnswerCheck {
  if (typeof raw === 'string' && idsOf(options).includes(raw)) return { ok: true, answer: raw };
  const offered = idsOf(options.filter(({ earlier }) => earlier !== true));
  const expected = `one of ${listed(notSure ? [...offered, NOT_SURE] : offered)}`;
  return wrong({ path: [], problem: sayValue(raw), expected });
}

function checkMulti(options: readonly AnswerOption[], raw: unknown): AnswerCheck {
  if (Array.isArray(raw)) return checkList(options, raw);
  return wrong({ path: [], problem: sayValue(raw), expected: `a list of any of ${listed(idsOf(options))}, [] for none of them, or "${NOT_SURE}"` });
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
