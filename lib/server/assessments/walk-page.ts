import 'server-only';
import { type AskedQuestion, askedQuestion } from '@/lib/assessments/asked-question';
import { answersByQuestion } from '@/lib/assessments/page-answers';
import { pageBefore, type WalkPage } from '@/lib/assessments/walk';
import { listEvidence } from '@/lib/db/assessments/evidence';
import { schoolScope } from '@/lib/db/scope';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';
import type { OpenVersion } from './open-version';
import { registerFacts } from './register';

/** One page of the walk with everything that stands on it. */
export interface WalkPageView {
  readonly page: WalkPage;
  readonly before: WalkPage | null;
  readonly asked: readonly AskedQuestion[];
}

/** A page of a version, or null when none of its questions applies or there is no such page. */
export async function walkPageView(actor: Actor, { version, walk }: OpenVersion, pageId: string): Promise<WalkPageView | null> {
  const page = walk.pages.find(({ id }) => id === pageId);
  if (page === undefined) return null;
  const [facts, school, evidence] = await Promise.all([registerFacts(actor, walk.content, version.siteId), currentSchool(actor), listEvidence(database(), schoolScope(actor), version.id)]);
  const photosOf = (question: string) => evidence.filter(({ questionId }) => questionId === question).map(({ id, byName, at }) => ({ id, address: `/assessments/${version.id}/photos/${id}`, by: `${byName}, ${momentWords(at, school)}` }));
  const kept = answersByQuestion(version.answers);
  const asked = page.questions.map((question) => ({ ...askedQuestion(question, kept.get(question.id), facts.find((fact) => fact.question === question.id), school), photos: photosOf(question.id) }));
  return { page, before: pageBefore(walk, pageId), asked };
}
