import type { ControlState, Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';

/** What a question does to controls once it is known whether it applies and what was answered. */
export type AnswerStanding = 'hidden' | 'unknown' | 'answered';

export function controlsOf(question: Question): readonly string[] {
  if (question.kind === 'number' || question.kind === 'text') return [];
  return [...new Set(question.options.flatMap((option) => Object.keys(option.sets.controls)))];
}

/**
 * States that one question gives its controls. Hidden: not applicable. Not answered or not sure: not sure.
 * @param notSureTicks options of a multi question that were left open one by one (amendment A47)
 */
export function statesFrom(
  question: Question,
  standing: AnswerStanding,
  answer: Answer | undefined,
  notSureTicks: readonly string[],
): ReadonlyMap<string, ControlState> {
  if (question.kind === 'number' || question.kind === 'text') return new Map();
  if (standing !== 'answered') {
    const state: ControlState = standing === 'hidden' ? 'not applicable' : 'not sure';
    return new Map(controlsOf(question).map((control) => [control, state]));
  }
  if (question.kind === 'choice') {
    const chosen = question.options.find((option) => option.id === answer);
    return new Map(Object.entries(chosen?.sets.controls ?? {}));
  }
  const ticked = Array.isArray(answer) ? answer : [];
  return new Map(question.options.flatMap((option) =>
    Object.entries(option.sets.controls).map(([control, whenTicked]): [string, ControlState] => {
      if (notSureTicks.includes(option.id)) return [control, 'not sure'];
      return [control, ticked.includes(option.id) ? whenTicked : question.unticked];
    })));
}
