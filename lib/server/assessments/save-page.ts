import 'server-only';
import type { ConflictShown } from '@/lib/assessments/conflict';
import { SHOWN_FIELD } from '@/lib/assessments/page-fields';
import { type AnswerOfPage, answersByQuestion, conflictsOf, isUntouched, readPageAnswers } from '@/lib/assessments/page-answers';
import { originOf, type RegisterFact, withFact } from '@/lib/assessments/register-facts';
import type { SavePageInput } from '@/lib/assessments/save-page-input';
import { whereNext } from '@/lib/assessments/walk';
import { saveWholePage } from '@/lib/db/assessments/save-page';
import type { Question } from '@/lib/content/model';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { conflictsShown } from './conflicts-shown';
import { type OpenVersion, readOpenVersion } from './open-version';
import { photosOfPage } from './page-photos';
import { registerFacts } from './register';

/** What the page shows besides faults: answers that two people gave at once. */
export interface SavePageData { readonly conflicts: readonly ConflictShown[] }

/** Saves a page of the walk: all of its answers or none, and nothing over an answer that somebody else changed meanwhile. */
export async function savePage(actor: Actor, input: SavePageInput): Promise<Outcome<SavePageData>> {
  const open = await readOpenVersion(actor, input.versionId);
  if (open === null) return refused(null, 'This assessment is not there');
  if (open.closed !== null) return refused(null, open.closed);
  const { version, walk: { content } } = open;
  const form = { getAll: (name: string): readonly unknown[] => [input[name] ?? []].flat() };
  const shown = form.getAll(SHOWN_FIELD);
  const questions = content.questions.filter(({ id }) => shown.includes(id));
  const kept = answersByQuestion(version.answers);
  const read = readPageAnswers(questions, form, kept);
  const { photos, faults } = await photosOfPage(actor, input, questions);
  if (!read.ok || faults.length > 0) return { ok: false, faults: [...(read.ok ? [] : read.faults), ...faults] };
  const facts = await registerFacts(actor, content, version.siteId);
  const sent = read.sent.map((one) => (one.questionId === input.take ? taken(one, facts) : one)).filter((one) => !isUntouched(one));
  if (conflictsOf(questions, sent, kept).length > 0) return twoAtOnce(actor, open, questions, sent);
  const answers = sent.map((one) => ({ ...one, origin: originOf(one.value, kept.get(one.questionId), facts.find(({ question }) => question === one.questionId)) }));
  const saved = await saveWholePage(database(), actor, new Date(), { versionId: version.id, answers, photos, drop: input.drop });
  if (saved.ok) return goOn(actor, input, questions, saved.changed);
  const now = await readOpenVersion(actor, input.versionId);
  return now === null || now.closed !== null ? refused(null, saved.why) : twoAtOnce(actor, now, questions, sent);
}

function taken(one: AnswerOfPage, facts: readonly RegisterFact[]): AnswerOfPage {
  const fact = facts.find(({ question }) => question === one.questionId);
  return fact === undefined ? one : { ...one, value: withFact(one.value ?? undefined, fact), notSureTicks: [] };
}

async function twoAtOnce(actor: Actor, { version }: OpenVersion, questions: readonly Question[], sent: readonly AnswerOfPage[]): Promise<Outcome<SavePageData>> {
  const conflicts = await conflictsShown(actor, conflictsOf(questions, sent, answersByQuestion(version.answers)));
  return { ok: false, faults: conflicts.map(({ field, byName, question }) => ({ field, message: `${byName} answered “${question}” while you were at it. Choose which answer stands` })), data: { conflicts } };
}

async function goOn(actor: Actor, { versionId, pageId, then, take, drop }: SavePageInput, questions: readonly Question[], changed: boolean): Promise<Outcome<SavePageData>> {
  const after = await readOpenVersion(actor, versionId);
  const query = changed ? '?saved' : '';
  const here = `/assessments/${versionId}` as const;
  if (after === null || then === 'stop') return { ok: true, then: `${here}${query}` };
  const next = whereNext(after.walk, pageId, questions.map(({ id }) => id));
  if (take !== undefined || drop !== undefined) return { ok: true, then: `${here}/walk/${pageId}${query}` };
  return { ok: true, then: next === null ? `${here}${query}` : `${here}/walk/${next.id}${query}` };
}
