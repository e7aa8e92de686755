import type { AnswerOption, Question } from '@/lib/content/model';

/**
 * The option that is what good looks like: the first that puts every control in place that it does not make
 * needless. None when no option does; then "what good looks like" stands under the question instead.
 */
export function goodOption(question: Extract<Question, { kind: 'choice' }>): AnswerOption | null {
  return question.options.find((option) => {
    const states = Object.values(option.sets.controls);
    return states.includes('in place') && states.every((state) => state === 'in place' || state === 'not applicable');
  }) ?? null;
}
