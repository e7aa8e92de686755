import type { Content, PrefillSource, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { resolve } from '@/lib/questionnaire/resolve';
import { ANSWER_ORIGINS, type AnswerOrigin, type AnswerRecord } from './version';

/** What the school has written down elsewhere, as an answer. */
export interface RegisterFact {
  readonly question: string;
  readonly answer: Answer;
  readonly from: PrefillSource;
  /** where it stands, in words */
  readonly where: string;
  /** filled in and confirmed, not asked again; else it is only told beside the question */
  readonly prefilled: boolean;
}

/** How what the register says stands to what was answered. */
export type FactStanding = 'to confirm' | 'told' | 'as answered' | 'differs';

/** How a fact stands to the answer that is kept. */
export function standingOfFact({ answer, prefilled }: RegisterFact, kept: Answer | undefined): FactStanding {
  if (kept === undefined) return prefilled ? 'to confirm' : 'told';
  return says(kept, answer) ? 'as answered' : 'differs';
}

/** Whether an answer says what a fact says; figures that the register does not know may say anything. */
function says(kept: Answer, fact: Answer): boolean {
  if (typeof fact === 'string' || Array.isArray(fact)) return JSON.stringify(kept) === JSON.stringify(fact);
  if (typeof kept !== 'object' || Array.isArray(kept)) return false;
  const given = kept as Readonly<Record<string, unknown>>;
  return Object.entries(fact).every(([input, value]) => given[input] === value);
}

/** The answer with what the register says put into it: whole for a choice or a text, figure by figure for numbers. */
export function withFact(kept: Answer | undefined, { answer }: RegisterFact): Answer {
  if (typeof answer === 'string' || Array.isArray(answer) || typeof kept !== 'object' || Array.isArray(kept)) return answer;
  return { ...(kept as Readonly<Record<string, number>>), ...(answer as Readonly<Record<string, number>>) };
}

/**
 * Where an answer comes from, for the record: the register when it says what the register says, else somebody's own.
 * An answer that stays as it was keeps its origin; only its note was changed.
 */
export function originOf(answer: Answer | null, kept: AnswerRecord | undefined, fact: RegisterFact | undefined): AnswerOrigin {
  const before = ANSWER_ORIGINS.find((origin) => origin === kept?.origin);
  if (before !== undefined && kept?.value !== null && answer !== null && says(answer, kept?.value ?? '')) return before;
  if (answer === null || fact === undefined || !says(answer, fact.answer)) return 'typed';
  return fact.from === 'packs' ? 'from-packs' : 'from-site';
}

/**
 * Facts that are to be confirmed: those of questions that apply, also because of another fact, and that nobody has
 * answered, in the order of the questions.
 */
export function factsToConfirm(content: Content, facts: readonly RegisterFact[], answers: readonly AnswerRecord[]): readonly { readonly fact: RegisterFact; readonly question: Question }[] {
  const given = Object.fromEntries(answers.flatMap(({ questionId, value }): [string, Answer][] => (value === null ? [] : [[questionId, value]])));
  const fresh = facts.filter((fact) => standingOfFact(fact, given[fact.question]) === 'to confirm');
  const { path } = resolve(content, { ...given, ...Object.fromEntries(fresh.map((fact) => [fact.question, fact.answer])) });
  return path.flatMap((question) => fresh.filter((fact) => fact.question === question.id).map((fact) => ({ fact, question })));
}
