import 'server-only';
import { type Effect, effectOf } from '@/lib/assessments/effect';
import { documentOf } from '@/lib/assessments/version';
import type { Content } from '@/lib/content/model';
import { quickScore } from '@/lib/core/quick-score';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import { lastSave } from '@/lib/db/assessments/last-save';
import { schoolScope } from '@/lib/db/scope';
import { resolve } from '@/lib/questionnaire/resolve';
import type { Actor } from '../actor';
import { database } from '../database';
import type { OpenVersion } from './open-version';
import { withRecord } from './with-record';

/** What somebody's last saving changed, told only after it. */
export interface WhatSaved extends Effect {
  /** how many answers it changed */
  readonly answers: number;
  /** questions that no longer apply since; their answers are kept and do not count */
  readonly dropped: readonly string[];
  /** how many questions apply since that did not before */
  readonly asked: number;
}

/**
 * What the actor's last saving of a version changed, worked out from the log: nothing is carried from page to page that
 * a forged address could say otherwise. Null when this person has saved nothing.
 */
export async function whatSaved(actor: Actor, { version, walk }: OpenVersion): Promise<WhatSaved | null> {
  const last = await lastSave(database(), schoolScope(actor), version.id, actor.personId);
  if (last === null) return null;
  const after = documentOf(await withRecord(actor, version, new Date()));
  const before = { ...after, answers: withBefore(after.answers, last.before) };
  const [paths, now] = [pathOf(walk.content, before), walk.resolution];
  return {
    ...effectOf(quickScore(walk.content, before), quickScore(walk.content, after)),
    answers: Object.keys(last.before).length,
    dropped: walk.content.questions.filter(({ id }) => now.orphaned.includes(id) && !paths.orphaned.includes(id)).map(({ text }) => text),
    asked: now.path.filter((question) => !paths.path.includes(question)).length,
  };
}

const pathOf = (content: Content, { answers, inputs, notSureTicks }: AssessmentDocument) => resolve(content, answers, inputs, notSureTicks);

function withBefore(answers: Readonly<Record<string, Answer>>, before: Readonly<Record<string, Answer | null>>): Readonly<Record<string, Answer>> {
  const others = Object.entries(answers).filter(([id]) => !Object.hasOwn(before, id));
  const were = Object.entries(before).filter((entry): entry is [string, Answer] => entry[1] !== null);
  return Object.fromEntries([...others, ...were]);
}
