import 'server-only';
import type { ConflictShown } from '@/lib/assessments/conflict';
import type { Conflict } from '@/lib/assessments/page-answers';
import { answerField } from '@/lib/questionnaire/field-names';
import { answerWords } from '@/lib/wording/answers';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { currentSchool } from '../people/current-school';

/** Conflicts in words, with times as the school writes them. */
export async function conflictsShown(actor: Actor, conflicts: readonly Conflict[]): Promise<readonly ConflictShown[]> {
  const school = await currentSchool(actor);
  return conflicts.map(({ question, kept, sent }) => ({
    field: answerField(question.id),
    question: question.text,
    byName: kept?.byName ?? 'Somebody',
    at: kept === null ? '' : momentWords(kept.at, school),
    revision: kept?.revision ?? 0,
    theirs: { words: inWords(answerWords(question, kept?.value, kept?.notSureTicks)), note: kept?.note ?? '' },
    mine: { words: inWords(answerWords(question, sent.value, sent.notSureTicks)), note: sent.note },
  }));
}

const inWords = (words: string): string => (words === '' ? 'not answered' : words);
