import 'server-only';
import { z } from 'zod';
import { type AskedQuestion, askedQuestion } from '@/lib/assessments/asked-question';
import { type AnswerOfPage, answersByQuestion, conflictsOf, isUntouched, LONGEST_NOTE, readPageAnswers } from '@/lib/assessments/page-answers';
import { noteField } from '@/lib/assessments/page-fields';
import { askedOfCaretaker, judgeCaretakerLink, withCaretakerLines } from '@/lib/assessments/caretaker';
import { documentOf, type VersionRecord } from '@/lib/assessments/version';
import { contentByVersion } from '@/lib/content/editions';
import type { Question } from '@/lib/content/model';
import { answerByLink, noteOpened } from '@/lib/db/assessments/answer-by-link';
import { type CaretakerLink, findCaretakerLink } from '@/lib/db/assessments/caretaker-links';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import { line } from '@/lib/forms/fields';
import { resolve } from '@/lib/questionnaire/resolve';
import { momentWords } from '@/lib/wording/dates';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { sealOfCaretakerToken } from './caretaker-token';

export interface CaretakerPage {
  readonly link: CaretakerLink;
  readonly title: string;
  readonly school: string;
  readonly until: string;
  /** as the caretaker sees them: of some only the lines that are for them, and no note of the school's */
  readonly asked: readonly AskedQuestion[];
}
type Opened = { readonly ok: true; readonly page: CaretakerPage; readonly version: VersionRecord; readonly whole: readonly Question[] } | { readonly ok: false; readonly reason: string };

/** What a caretaker's link leads to, or why it does not work. Only the questions that still apply are asked. */
export async function openCaretakerLink(token: string): Promise<Opened> {
  const verdict = judgeCaretakerLink(await findCaretakerLink(database(), sealOfCaretakerToken(token)), new Date());
  if (!verdict.ok) return verdict;
  const { link } = verdict;
  const [version, school] = await Promise.all([readVersion(database(), schoolScope(link), link.versionId), currentSchool(link)]);
  const content = version === null ? undefined : contentByVersion(version.contentVersion);
  if (version === null || content === undefined) throw new Error('a caretaker’s link leads to no version that can be read');
  const { answers, inputs } = documentOf(version);
  const whole = resolve(content, answers, inputs).path.filter(({ id }) => link.questionIds.includes(id));
  const kept = answersByQuestion(version.answers);
  const asked = whole.map((question) => ({ ...askedQuestion(askedOfCaretaker(question), kept.get(question.id), undefined, school), note: '', by: null, waitsFor: '' }));
  return { ok: true, whole, version, page: { link, title: version.title, school: school.schoolName, until: momentWords(link.expiresAt, school), asked } };
}

/** Counts that the page was opened by its link. */
export async function countOpening(page: CaretakerPage): Promise<void> {
  await noteOpened(database(), page.link, new Date());
}

/** What the caretaker sends; the fields of the questions pass, to be read by the questions themselves. */
export const CaretakerAnswersSchema = z.looseObject({ token: z.string(), name: line('Enter your name', 100) });
type CaretakerAnswers = z.output<typeof CaretakerAnswersSchema>;

/** Saves what the caretaker answered, under the name they gave. Nothing is written over what somebody else changed meanwhile. */
export async function answerAsCaretaker(input: CaretakerAnswers): Promise<Outcome> {
  const opened = await openCaretakerLink(input.token);
  if (!opened.ok) return refused(null, opened.reason);
  const { page: { link, asked }, version, whole } = opened;
  const kept = answersByQuestion(version.answers);
  const read = readPageAnswers(asked.map(({ question }) => question), { getAll: (name) => [input[name] ?? []].flat() }, kept);
  if (!read.ok) return { ok: false, faults: read.faults };
  const sent = read.sent.filter((one) => !isUntouched(one)).map((one): AnswerOfPage => {
    const question = whole.find(({ id }) => id === one.questionId);
    const before = kept.get(one.questionId);
    const value = question === undefined ? one.value : withCaretakerLines(question, before?.value ?? undefined, before?.notSureTicks ?? [], one.value);
    return { ...one, value, note: noteAfter(before?.note ?? '', one.note, input.name) };
  });
  if (sent.every(({ value, note }) => value === null && note === '')) return refused(null, 'Nothing is answered yet. “Not sure” is an answer too');
  const long = sent.filter(({ note }) => note.length > LONGEST_NOTE);
  if (long.length > 0) return { ok: false, faults: long.map(({ questionId }) => ({ field: noteField(questionId), message: 'There is no room for so many words beside this answer. Write less' })) };
  const met = conflictsOf(whole, sent, kept);
  if (met.length > 0) return { ok: false, faults: met.map(({ question, kept: theirs }) => ({ field: question.id, message: `${theirs?.byName ?? 'Somebody'} answered this while you were writing. Open your link again, and look at it` })) };
  const answers = sent.filter((one) => one.value !== null || one.note !== '' || kept.has(one.questionId)).map((one) => ({ ...one, origin: 'caretaker' as const }));
  const saved = await answerByLink(database(), link, `${input.name} (by link)`, new Date(), sealOfCaretakerToken(input.token), answers);
  return saved.ok ? { ok: true, done: 'Saved. Thank you. You can change your answers here until the link ends.' } : refused(null, saved.why);
}

/** What the school has noted is not shown to somebody by a link: their words come after it, with their name. */
function noteAfter(before: string, typed: string, name: string): string {
  return typed === '' ? before : [before, `${name}: ${typed}`].filter((part) => part !== '').join('\n');
}
