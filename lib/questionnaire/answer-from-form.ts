import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { readTypedNumber } from './read-number';
import { NOT_SURE, validateAnswer } from './validate-answer';

/** What is needed of FormData. */
export interface FormFields { readonly getAll: (name: string) => readonly unknown[] }

/** A message for the summary on top and for the field it belongs to. */
export interface FieldFault { readonly field: string; readonly message: string }

/** `answer` is undefined when nothing was filled in: the question stays open, and that is no fault. */
export type FormRead =
  | { readonly ok: true; readonly answer: Answer | undefined; readonly notSureTicks: readonly string[] }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/** The field that holds the choice, the ticks, the text, or "not sure" for the whole question. */
export const ANSWER_FIELD = 'answer';
/** The field of a multi question with the options that somebody is not sure about, one by one. */
export const NOT_SURE_TICK_FIELD = 'notSureTick';
/** The field of a multi question that says: looked at, and none of these is true. */
export const NONE_FIELD = 'none';

/**
 * Reads one question's page. Field names: `answer` for a choice, ticks and text, and with the value "not sure"
 * for every kind; `notSureTick` for single options not known; `none` when no option is true; the id of the
 * input for each number.
 * @returns the answer, or a message for each field that cannot be read
 */
export function answerFromForm(question: Question, form: FormFields): FormRead {
  const answers = texts(form, ANSWER_FIELD);
  if (answers.includes(NOT_SURE) && question.notSure) return { ok: true, answer: NOT_SURE, notSureTicks: [] };
  if (question.kind === 'number') return numbersFromForm(question, form);
  if (question.kind === 'multi') return ticksFromForm(question, answers, texts(form, NOT_SURE_TICK_FIELD), form);
  const typed = (answers[0] ?? '').trim();
  return typed === '' ? { ok: true, answer: undefined, notSureTicks: [] } : checked(question, typed, []);
}

function texts(form: FormFields, name: string): readonly string[] {
  return form.getAll(name).filter((value) => typeof value === 'string');
}

/** Nothing ticked is "none of these" only when somebody says so; else the question stays open and counts as not sure. */
function ticksFromForm(question: Question, ticked: readonly string[], open: readonly string[], form: FormFields): FormRead {
  const none = texts(form, NONE_FIELD).length > 0;
  if (ticked.length === 0 && open.length === 0 && !none) return { ok: true, answer: undefined, notSureTicks: [] };
  const both = ticked.filter((id) => open.includes(id));
  if (both.length > 0) return { ok: false, faults: both.map((field) => ({ field, message: 'Tick it, or say that you are not sure, not both' })) };
  const known = validateAnswer(question, open);
  return known.ok ? checked(question, ticked, open) : refused(known.faults);
}

function numbersFromForm(question: Extract<Question, { kind: 'number' }>, form: FormFields): FormRead {
  const faults: FieldFault[] = [];
  const numbers = new Map<string, number>();
  for (const { input } of question.fields) {
    const typed = (texts(form, input)[0] ?? '').trim();
    if (typed === '') continue;
    const read = readTypedNumber(typed);
    if (read.ok) numbers.set(input, read.value);
    else faults.push({ field: input, message: read.reason });
  }
  const range = numbers.size === 0 ? [] : rangeFaults(question, numbers);
  if (faults.length > 0 || range.length > 0) return { ok: false, faults: [...faults, ...range] };
  return { ok: true, answer: numbers.size === 0 ? undefined : Object.fromEntries(numbers), notSureTicks: [] };
}

function rangeFaults(question: Question, numbers: ReadonlyMap<string, number>): readonly FieldFault[] {
  const check = validateAnswer(question, Object.fromEntries(numbers));
  return check.ok ? [] : check.faults.map(fieldFault);
}

function checked(question: Question, raw: unknown, notSureTicks: readonly string[]): FormRead {
  const check = validateAnswer(question, raw);
  return check.ok ? { ok: true, answer: check.answer, notSureTicks } : refused(check.faults);
}

type Fault = { readonly path: readonly (string | number)[]; readonly expected: string };
const fieldFault = ({ path, expected }: Fault): FieldFault => ({ field: typeof path[0] === 'string' ? path[0] : ANSWER_FIELD, message: `Enter ${expected}` });
const refused = (faults: readonly Fault[]): FormRead => ({ ok: false, faults: faults.map(fieldFault) });
