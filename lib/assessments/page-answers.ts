import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { answerFromForm, type FieldFault, type FormFields } from '@/lib/questionnaire/answer-from-form';
import { type KeptAnswer, reviseAnswer, type SentAnswer } from './answer-revision';
import { keepField, noteField, seenField } from './page-fields';
import type { AnswerRecord } from './version';

export interface AnswerOfPage extends SentAnswer { readonly questionId: string }
export type PageAnswers =
  | { readonly ok: true; readonly sent: readonly AnswerOfPage[] }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

export const LONGEST_NOTE = 2000;

/**
 * Reads what the form of a page holds: an answer, a note and the revision seen for each question. A question of which
 * somebody chose to leave what another person wrote is left out.
 * @param questions those that stood in the form
 * @param kept the answers as they are now, by question
 */
export function readPageAnswers(questions: readonly Question[], form: FormFields, kept: ReadonlyMap<string, AnswerRecord>): PageAnswers {
  const faults: FieldFault[] = [];
  const sent = questions.flatMap((question): readonly AnswerOfPage[] => {
    const choice = text(form, keepField(question.id));
    if (choice === 'theirs') return [];
    const read = answerFromForm(question, form, kept.get(question.id)?.value ?? undefined);
    const note = noteOf(form, question.id);
    if (note.length > LONGEST_NOTE) faults.push({ field: noteField(question.id), message: `Use at most ${LONGEST_NOTE} characters` });
    if (!read.ok) faults.push(...read.faults);
    return read.ok ? [{ questionId: question.id, value: read.answer ?? null, notSureTicks: read.notSureTicks, note, seen: revision(choice ?? text(form, seenField(question.id))) }] : [];
  });
  return faults.length > 0 ? { ok: false, faults } : { ok: true, sent };
}

const text = (form: FormFields, name: string): string | undefined => form.getAll(name).find((value) => typeof value === 'string');

/** A text area sends two signs for the end of a line; other control signs, and marks that turn text around, are no words. */
function noteOf(form: FormFields, question: string): string {
  return (text(form, noteField(question)) ?? '').replace(/\r\n?/gu, '\n').replace(/(?!\n)[\p{Cc}\u2028-\u202e\u2066-\u2069]/gu, ' ').trim();
}

/** What cannot be read was never seen. */
function revision(sent: string | undefined): number {
  const digits = /^(?:mine-)?(\d{1,9})$/u.exec(sent ?? '')?.[1];
  return digits === undefined ? -1 : Number(digits);
}

/** What somebody left as empty as they found it: whatever another person answered meanwhile stands. */
export function isUntouched({ seen, value, note }: AnswerOfPage): boolean {
  return seen === 0 && value === null && note === '';
}

/** An answer that somebody else changed since the page was opened, and what is sent now. */
export interface Conflict { readonly question: Question; readonly kept: AnswerRecord | null; readonly sent: AnswerOfPage }

/** Every answer of a page that would be written over one its sender has not seen. */
export function conflictsOf(questions: readonly Question[], sent: readonly AnswerOfPage[], kept: ReadonlyMap<string, AnswerRecord>): readonly Conflict[] {
  return questions.flatMap((question) => {
    const mine = sent.find(({ questionId }) => questionId === question.id);
    const theirs = kept.get(question.id) ?? null;
    return mine === undefined || reviseAnswer(asKept(theirs), mine).ok ? [] : [{ question, kept: theirs, sent: mine }];
  });
}

const asKept = (record: AnswerRecord | null): KeptAnswer | null => (record === null ? null : { ...record, by: record.byName });

/** The answers of a version by question, those that are only a note too. */
export function answersByQuestion(answers: readonly AnswerRecord[]): ReadonlyMap<string, AnswerRecord> {
  return new Map(answers.map((answer) => [answer.questionId, answer]));
}

/** The value of an answer, as the questionnaire wants it. */
export function valueOf(record: AnswerRecord | undefined): Answer | undefined { return record?.value ?? undefined; }
