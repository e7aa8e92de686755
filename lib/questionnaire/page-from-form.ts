import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { answerFromForm, type FieldFault, type FormFields } from './answer-from-form';

type Answers = Readonly<Record<string, Answer>>;
type OpenTicks = Readonly<Record<string, readonly string[]>>;
/** The part of a document that the questionnaire fills in. */
export interface Answered { readonly answers: Answers; readonly notSureTicks?: OpenTicks }

export type PageRead =
  | { readonly ok: true; readonly answered: Answered }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

/**
 * Reads a page with several questions into what was answered before: what is given anew replaces, what was
 * emptied goes, and questions of other pages stay as they are.
 * @param questions those that stood in the form, also when they no longer apply now
 * @returns everything answered so far, or a message for each field that cannot be read
 */
export function pageFromForm(questions: readonly Question[], form: FormFields, before: Answered): PageRead {
  const reads = questions.map((question) => ({ id: question.id, read: answerFromForm(question, form, before.answers[question.id]) }));
  const faults = reads.flatMap(({ read }) => (read.ok ? [] : read.faults));
  if (faults.length > 0) return { ok: false, faults };
  const answers = new Map(Object.entries(before.answers));
  const open = new Map(Object.entries(before.notSureTicks ?? {}));
  for (const { id, read } of reads) {
    if (!read.ok) continue;
    if (read.answer === undefined) answers.delete(id);
    else answers.set(id, read.answer);
    if (read.notSureTicks.length === 0) open.delete(id);
    else open.set(id, read.notSureTicks);
  }
  return { ok: true, answered: { answers: Object.fromEntries(answers), ...(open.size === 0 ? {} : { notSureTicks: Object.fromEntries(open) }) } };
}
