import 'server-only';
import { isOpenPage, type WalkPage } from '@/lib/assessments/walk';
import type { Question } from '@/lib/content/model';
import { listVersions, type ListedVersion } from '@/lib/db/assessments/list-assessments';
import { schoolScope } from '@/lib/db/scope';
import { NOT_SURE } from '@/lib/questionnaire/answer-fault';
import { keeperQuestions } from '@/lib/questionnaire/pages';
import { linesSaid } from '@/lib/questionnaire/ticks';
import type { Actor } from '../actor';
import { database } from '../database';
import type { OpenVersion } from './open-version';

/** Something to do about one question, with the page it stands on. */
export interface ToLookAt { readonly question: Question; readonly page: string; readonly waitsFor: string; readonly what: string }

export interface Overview {
  readonly listed: ListedVersion;
  /** other versions of the same assessment, the newest first */
  readonly others: readonly ListedVersion[];
  readonly open: readonly WalkPage[];
  readonly notSure: readonly ToLookAt[];
  readonly missing: readonly ToLookAt[];
  readonly forCaretaker: number;
  /** answers copied from the version before that nobody has changed since */
  readonly copied: number;
}

/** What is done and what is left of a version; null when it is not there. */
export async function overviewOf(actor: Actor, { version, walk }: OpenVersion): Promise<Overview | null> {
  const all = await listVersions(database(), schoolScope(actor));
  const listed = all.find(({ id }) => id === version.id);
  if (listed === undefined) return null;
  const kept = new Map(version.answers.map((answer) => [answer.questionId, answer]));
  const look = (question: Question, what: string): ToLookAt => ({ question, what, waitsFor: kept.get(question.id)?.waitsFor ?? '', page: walk.pages.find(({ questions }) => questions.includes(question))?.id ?? '' });
  const { path, missing } = walk.resolution;
  return {
    listed,
    others: all.filter((one) => one.assessmentId === version.assessmentId && one.id !== version.id),
    open: walk.pages.filter(isOpenPage),
    notSure: path.flatMap((question) => { const answer = kept.get(question.id); return unsure(question, answer?.value ?? undefined, answer?.notSureTicks ?? []).map((what) => look(question, what)); }),
    missing: path.filter(({ id }) => missing.includes(id)).map((question) => look(question, '')),
    forCaretaker: keeperQuestions(path).filter(({ id }) => missing.includes(id)).length,
    copied: version.answers.filter(({ origin }) => origin === 'copied').length,
  };
}

/** What of an answer is "not sure": the whole, or lines of it by their words. */
function unsure(question: Question, value: Parameters<typeof linesSaid>[1], notSureTicks: readonly string[]): readonly string[] {
  if (value === NOT_SURE) return ['not sure'];
  if (question.kind !== 'ticks' || value === undefined) return [];
  const said = linesSaid(question, value, notSureTicks);
  const lines = question.options.filter(({ id }) => said[id] === NOT_SURE).map(({ label }) => label);
  return lines.length === 0 ? [] : [`not sure: ${lines.join('; ')}`];
}
