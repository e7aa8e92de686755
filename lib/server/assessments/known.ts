import 'server-only';
import { answersByQuestion } from '@/lib/assessments/page-answers';
import { factsToConfirm, originOf } from '@/lib/assessments/register-facts';
import { saveAnswers } from '@/lib/db/assessments/save-answer';
import { answerWords } from '@/lib/wording/answers';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { type OpenVersion, readOpenVersion } from './open-version';
import { registerFacts } from './register';

/** Something the school has written down already, with the question it answers. */
export interface KnownAnswer { readonly questionId: string; readonly question: string; readonly words: string; readonly where: string; readonly page: string | null }

/** What the registers know that nobody has confirmed for this version. */
export async function knownAnswers(actor: Actor, { version, walk }: OpenVersion): Promise<readonly KnownAnswer[]> {
  const facts = await registerFacts(actor, walk.content, version.siteId);
  return factsToConfirm(walk.content, facts, version.answers).map(({ fact, question }) => ({
    questionId: question.id, question: question.text, words: answerWords(question, fact.answer), where: fact.where,
    page: walk.pages.find(({ all }) => all.includes(question.id))?.id ?? null,
  }));
}

/** Takes over what was confirmed of the registers, and goes on to the first question that is open. */
export async function confirmKnown(actor: Actor, input: { readonly versionId: string; readonly right: readonly string[] }): Promise<Outcome> {
  const open = await readOpenVersion(actor, input.versionId);
  if (open === null) return refused(null, 'This assessment is not there');
  if (open.closed !== null) return refused(null, open.closed);
  const { version, walk } = open;
  const facts = await registerFacts(actor, walk.content, version.siteId);
  const kept = answersByQuestion(version.answers);
  const answers = factsToConfirm(walk.content, facts, version.answers).filter(({ question }) => input.right.includes(question.id)).map(({ fact, question }) => {
    const before = kept.get(question.id);
    return { questionId: question.id, value: fact.answer, notSureTicks: [], note: before?.note ?? '', seen: before?.revision ?? 0, origin: originOf(fact.answer, before, fact) };
  });
  const saved = await saveAnswers(database(), actor, new Date(), version.id, answers);
  return saved.ok ? { ok: true, then: `/assessments/${version.id}/walk` } : refused(null, saved.why);
}
