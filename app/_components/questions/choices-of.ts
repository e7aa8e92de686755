import type { AnswerOption, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import type { Choice } from '../ui/choice-rows';
import { goodOption } from './good-option';

/** The rows of a question with one answer. What an earlier edition offered stays only where it is the answer that stands. */
export function choicesOf(question: Extract<Question, { kind: 'choice' }>, answer: Answer | undefined): readonly Choice[] {
  const good = goodOption(question);
  return question.options
    .filter((option) => option.earlier !== true || option.id === answer)
    .map((option) => ({ value: option.id, label: option.label, good: option === good, hint: hintOf(option, option === good ? question.good : undefined) }));
}

const hintOf = (option: AnswerOption, good: string | undefined): string | undefined => (option.earlier === true ? 'An answer of an earlier edition, no longer offered; it is read cautiously. Choose again.' : good);

export const NOT_SURE_HINT = 'Fine to say. It counts as a wide range, never as good.';
