import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { type FormValues, formValues } from '@/lib/questionnaire/form-values';
import { answerWords } from '@/lib/wording/answers';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { type FactStanding, type RegisterFact, standingOfFact } from './register-facts';
import type { AnswerRecord } from './version';

/** A photo beside an answer, as it is shown. */
export interface EvidenceShown { readonly id: string; readonly address: string; readonly by: string }

/** A question as it stands in a form, with what is known about its answer. */
export interface AskedQuestion {
  readonly question: Question;
  /** the answer that is kept; of an earlier edition it may hold what has no field any more */
  readonly answer: Answer | undefined;
  readonly values: FormValues;
  readonly note: string;
  /** revision that is shown, to be sent back */
  readonly seen: number;
  /** who gave the answer, when and from where, in words; null while there is none */
  readonly by: string | null;
  readonly photos: readonly EvidenceShown[];
  /** to whom it was sent; empty when nobody */
  readonly waitsFor: string;
  readonly register: { readonly standing: FactStanding; readonly where: string; readonly words: string } | null;
}

/** What one question of a page shows. Where nobody has answered, what the register says is filled in, to be confirmed. */
export function askedQuestion(question: Question, kept: AnswerRecord | undefined, fact: RegisterFact | undefined, style: DateStyle): AskedQuestion {
  const answer = kept?.value ?? undefined;
  const standing = fact === undefined ? null : standingOfFact(fact, answer);
  return {
    question,
    answer,
    values: formValues(question, standing === 'to confirm' ? fact?.answer : answer, kept?.notSureTicks ?? []),
    note: kept?.note ?? '',
    seen: kept?.revision ?? 0,
    by: kept === undefined || answer === undefined ? null : `${kept.byName}, ${momentWords(kept.at, style)}${ORIGINS[kept.origin] ?? ''}`,
    photos: [],
    waitsFor: kept?.waitsFor ?? '',
    register: fact === undefined || standing === null ? null : { standing, where: fact.where, words: answerWords(question, fact.answer) },
  };
}

const ORIGINS: Readonly<Record<string, string>> = {
  copied: ', copied from the version before',
  'from-site': ', from the register of places',
  'from-packs': ', from the register of packs',
  imported: ', from a file',
};
