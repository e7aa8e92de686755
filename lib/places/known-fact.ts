import type { Content, PrefillSource } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';

/** What the school has written down already, as the answer to a question of the content. */
export interface KnownFact {
  /** id of the question */
  readonly question: string;
  readonly answer: Answer;
  readonly from: PrefillSource;
  /** where it stands, for the person who is to confirm it: "Main hall, Charging table" */
  readonly where: string;
  /** the content lets this question be filled in from there; else it is a suggestion beside the question, which is asked */
  readonly prefilled: boolean;
}

/** A fact before it is held against the content. Fields of a number question that nobody knows are undefined. */
export interface RawFact {
  readonly question: string;
  readonly answer: string | Readonly<Record<string, number | null | undefined>> | null | undefined;
  readonly from: PrefillSource;
  readonly where: string;
}

/**
 * Holds facts to the questions of one edition: only what answers a question that it has, within its bounds, is one. A
 * figure outside of the bounds is left out by itself, the others stay.
 */
export function knownFacts(content: Content, raw: readonly RawFact[]): readonly KnownFact[] {
  const questions = new Map(content.questions.map((question) => [question.id, question]));
  return raw.flatMap(({ question: id, answer, from, where }): KnownFact[] => {
    const question = questions.get(id);
    if (question === undefined || answer === null || answer === undefined) return [];
    const fit = typeof answer === 'string' ? checked(question, answer) : numbers(question, answer);
    return fit === null ? [] : [{ question: id, answer: fit, from, where, prefilled: question.prefilledFrom?.includes(from) ?? false }];
  });
}

type Question = Content['questions'][number];

function checked(question: Question, raw: unknown): Answer | null {
  const check = validateAnswer(question, raw);
  return check.ok ? check.answer : null;
}

function numbers(question: Question, given: Readonly<Record<string, number | null | undefined>>): Answer | null {
  const fit = Object.entries(given).filter(([input, value]) => typeof value === 'number' && checked(question, { [input]: value }) !== null);
  return fit.length === 0 ? null : checked(question, Object.fromEntries(fit));
}
