import 'server-only';
import type { Question } from '@/lib/content/model';
import { can } from '@/lib/access/can';
import { isUnsettled, type Thread, threadsOf } from '@/lib/assessments/comments';
import type { AnswerRecord } from '@/lib/assessments/version';
import { listComments } from '@/lib/db/assessments/comments';
import { listLooks } from '@/lib/db/assessments/looks';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import { resolve } from '@/lib/questionnaire/resolve';
import { answerWords } from '@/lib/wording/answers';
import type { Actor } from '../actor';
import { database } from '../database';
import { resultView, type ResultView } from './result-view';

export interface ReviewedAnswer {
  readonly question: Question;
  readonly words: string;
  readonly note: string;
  readonly byName: string;
  /** what was answered in the version it was copied from, when it is different; null when it is the same or there was none */
  readonly before: string | null;
  readonly isNotSure: boolean;
  readonly waitsFor: string;
  readonly threads: readonly Thread[];
  /** the officer has looked at it as it is now */
  readonly seen: boolean;
}

export const SHOWN_ANSWERS = ['all', 'changed', 'not-sure', 'commented', 'unseen'] as const;
export type ShownAnswers = (typeof SHOWN_ANSWERS)[number];

export interface ReviewView {
  readonly view: ResultView;
  readonly sections: readonly { readonly id: string; readonly title: string; readonly answers: readonly ReviewedAnswer[] }[];
  /** remarks on the whole */
  readonly threads: readonly Thread[];
  readonly unsettled: number;
  readonly counts: Readonly<Record<ShownAnswers, number>>;
  readonly mayLook: boolean;
}

/** Every answer of a version as an officer reads it, with what was said of it; null when it is not there. */
export async function reviewView(actor: Actor, versionId: string, shown: ShownAnswers): Promise<ReviewView | null> {
  const view = await resultView(actor, versionId);
  if (view === null) return null;
  const { version, standing, scored: { content } } = view;
  const scope = schoolScope(actor);
  const [comments, looks, before] = await Promise.all([
    listComments(database(), scope, versionId), listLooks(database(), scope, versionId, actor.personId),
    standing.basedOnId === null ? null : readVersion(database(), scope, standing.basedOnId),
  ]);
  const threads = threadsOf(comments);
  const { path } = resolve(content, view.scored.document.answers, view.scored.document.inputs);
  const [now, then] = [byQuestion(version.answers), byQuestion(before?.answers ?? [])];
  const answers = path.map((question) => reviewed(question, now.get(question.id), before === null ? undefined : then.get(question.id), threads, looks));
  const left = answers.filter((answer) => isShown(answer, shown));
  return {
    view, threads: threads.filter(({ first }) => first.questionId === null), unsettled: threads.filter(isUnsettled).length,
    sections: content.sections.map(({ id, title }) => ({ id, title, answers: left.filter(({ question }) => question.section === id) })).filter((section) => section.answers.length > 0),
    counts: Object.fromEntries(SHOWN_ANSWERS.map((name) => [name, answers.filter((answer) => isShown(answer, name)).length])) as Record<ShownAnswers, number>,
    mayLook: can(actor.role, 'assessment.look', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } }),
  };
}

const byQuestion = (answers: readonly AnswerRecord[]): ReadonlyMap<string, AnswerRecord> => new Map(answers.map((answer) => [answer.questionId, answer]));

function reviewed(question: Question, now: AnswerRecord | undefined, then: AnswerRecord | undefined, threads: readonly Thread[], looks: ReadonlyMap<string, number>): ReviewedAnswer {
  const words = answerWords(question, now?.value, now?.notSureTicks ?? []);
  const before = then === undefined ? null : answerWords(question, then.value, then.notSureTicks);
  return {
    question, words, note: now?.note ?? '', byName: now?.byName ?? '', before: before === null || before === words ? null : before,
    isNotSure: words === '' || words.includes('not sure'), waitsFor: now?.waitsFor ?? '',
    threads: threads.filter(({ first }) => first.questionId === question.id), seen: now !== undefined && looks.get(question.id) === now.revision,
  };
}

function isShown({ before, isNotSure, threads, seen }: ReviewedAnswer, shown: ShownAnswers): boolean {
  switch (shown) {
    case 'all': return true;
    case 'changed': return before !== null;
    case 'not-sure': return isNotSure;
    case 'commented': return threads.length > 0;
    case 'unseen': return !seen;
  }
}
