import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { type AnswerFault, NOT_SURE } from './answer-fault';
import { withEarlier } from './earlier-fields';
import { answerField, noneField, openTicksField, partField } from './field-names';
import { askedFields, boxesOf } from './number-boxes';
import { numbersIn, readBoxes } from './number-form';
import { isTickSaid, type TickQuestion, type TickSaid } from './ticks';
import { validateAnswer } from './validate-answer';

/** What is needed of FormData. */
export interface FormFields { readonly getAll: (name: string) => readonly unknown[] }

/** A message for the summary on top and for the field it belongs to. */
export interface FieldFault { readonly field: string; readonly message: string }

/** `answer` is undefined when nothing was filled in: the question stays open, and that is no fault. */
export type FormRead =
  | { readonly ok: true; readonly answer: Answer | undefined; readonly notSureTicks: readonly string[] }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * Reads one question out of a form; the names of its fields are those of `field-names.ts`. "Not sure" for the
 * whole question wins over whatever else was filled in; on a page of ticks it fills the lines left blank.
 * @param before the answer as it stood: what an earlier edition offered has no field and stays while it counts
 * @returns the answer, or a message for each field that cannot be read
 */
export function answerFromForm(question: Question, form: FormFields, before?: Answer): FormRead {
  const answers = texts(form, answerField(question.id));
  const unsure = answers.includes(NOT_SURE) && question.notSure;
  if (question.kind === 'ticks') return linesFromForm(question, form, unsure);
  if (unsure) return given(NOT_SURE);
  if (question.kind === 'number') return numbersFromForm(question, form, before);
  if (question.kind === 'multi') return listFromForm(question, answers, form);
  const typed = (answers[0] ?? '').trim();
  return typed === '' ? given(keptChoice(question, before)) : checked(question, typed, []);
}

/** An option that is no longer offered cannot be chosen again, so leaving the page as it is must not take it away. */
function keptChoice(question: Question, before: Answer | undefined): Answer | undefined {
  return question.kind === 'choice' && question.options.some(({ id, earlier }) => id === before && earlier === true) ? before : undefined;
}

function texts(form: FormFields, name: string): readonly string[] {
  return form.getAll(name).filter((value) => typeof value === 'string');
}

/** A line that was left blank is not answered, which is not the same as no. */
function linesFromForm(question: TickQuestion, form: FormFields, unsure: boolean): FormRead {
  const faults: FieldFault[] = [];
  const lines = question.options.flatMap(({ id }): [string, TickSaid][] => {
    const field = partField(question.id, id);
    const said = texts(form, field)[0] ?? '';
    if (said === '') return unsure ? [[id, NOT_SURE]] : [];
    if (isTickSaid(said)) return [[id, said]];
    faults.push({ field, message: 'Choose yes, partly, no or not sure' });
    return [];
  });
  if (faults.length > 0) return { ok: false, faults };
  return given(lines.length === 0 ? undefined : Object.fromEntries(lines));
}

/** Nothing ticked is "none of these" only when somebody says so; else the question stays open and counts as not sure. */
function listFromForm(question: Question, ticked: readonly string[], form: FormFields): FormRead {
  const open = texts(form, openTicksField(question.id));
  const none = texts(form, noneField(question.id)).length > 0;
  if (ticked.length === 0 && open.length === 0 && !none) return given(undefined);
  const both = ticked.filter((id) => open.includes(id));
  if (both.length > 0) return { ok: false, faults: both.map((id) => ({ field: partField(question.id, id), message: 'Tick it, or say that you are not sure, not both' })) };
  const known = validateAnswer(question, open);
  return known.ok ? checked(question, ticked, open) : refused(question, known.faults);
}

function numbersFromForm(question: Extract<Question, { kind: 'number' }>, form: FormFields, before: Answer | undefined): FormRead {
  const fields = askedFields(question.fields);
  const typed = Object.fromEntries(fields.flatMap(boxesOf).map(({ name }) => [name, texts(form, partField(question.id, name))[0] ?? '']));
  const { numbers, faults } = readBoxes(fields, typed);
  if (faults.length > 0) return { ok: false, faults: faults.map(({ box, message }) => ({ field: partField(question.id, box), message })) };
  const kept = Object.entries(withEarlier(question.fields, numbersIn(before), numbers)).filter(([, value]) => value !== undefined);
  return kept.length === 0 ? given(undefined) : checked(question, Object.fromEntries(kept), []);
}

function checked(question: Question, raw: unknown, notSureTicks: readonly string[]): FormRead {
  const check = validateAnswer(question, raw);
  return check.ok ? given(check.answer, notSureTicks) : refused(question, check.faults);
}

const given = (answer: Answer | undefined, notSureTicks: readonly string[] = []): FormRead => ({ ok: true, answer, notSureTicks });

function refused(question: Question, faults: readonly AnswerFault[]): FormRead {
  return { ok: false, faults: faults.map(({ path: [part], expected }) => ({
    field: typeof part === 'string' ? partField(question.id, part) : answerField(question.id),
    message: `Enter ${expected}`,
  })) };
}
