import 'server-only';
import { type AskedQuestion, askedQuestion } from '@/lib/assessments/asked-question';
import { answersByQuestion } from '@/lib/assessments/page-answers';
import { pageBefore, type WalkPage } from '@/lib/assessments/walk';
import type { Actor } from '../actor';
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
  const [facts, school] = await Promise.all([registerFacts(actor, walk.content, version.siteId), currentSchool(actor)]);
  const kept = answersByQuestion(version.answers);
  const asked = page.questions.map((question) => askedQuestion(question, kept.get(question.id), facts.find((fact) => fact.question === question.id), school));
  return { page, before: pageBefore(walk, pageId), asked };
}
