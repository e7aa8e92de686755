import type { ControlState, Question, TickLine } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';

/** What a question does to controls once it is known whether it applies and what was answered. */
export type AnswerStanding = 'hidden' | 'unknown' | 'answered';

export function controlsOf(question: Question): readonly string[] {
  if (question.kind === 'number' || question.kind === 'text') return [];
  return [...new Set(question.options.flatMap((option) => Object.keys(option.sets.controls)))];
}

/**
 * States that one question gives its controls. Hidden: not applicable, or what the question says it then is.
 * Not answered or not sure: not sure.
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
    const state: ControlState = standing === 'hidden' ? question.hiddenAs ?? 'not applicable' : 'not sure';
    return new Map(controlsOf(question).map((control) => [control, state]));
  }
  if (question.kind === 'choice') {
    const chosen = question.options.find((option) => option.id === answer);
    return new Map(Object.entries(chosen?.sets.controls ?? {}));
  }
  if (question.kind === 'ticks') return statesFromTicks(question.options, answer, notSureTicks);
  const ticked = Array.isArray(answer) ? answer : [];
  return new Map(question.options.flatMap((option) =>
    Object.entries(option.sets.controls).map(([control, whenTicked]): [string, ControlState] => {
      if (notSureTicks.includes(option.id)) return [control, 'not sure'];
      return [control, ticked.includes(option.id) ? whenTicked : question.unticked];
    })));
}

/**
 * States of a page of ticks. Line by line: yes is what the line sets, partly its own reading, no is absent,
 * blank is not sure. A plain list, as an earlier edition took it: in it is yes and not in it is no, but it
 * says nothing of a line that came later, nor enough of one that asks for more than it used to.
 */
function statesFromTicks(lines: readonly TickLine[], answer: Answer | undefined, notSureTicks: readonly string[]): ReadonlyMap<string, ControlState> {
  return new Map(lines.flatMap((line) => Object.entries(line.sets.controls).map(([control, whenYes]): [string, ControlState] => {
    const said = notSureTicks.includes(line.id) ? 'not sure' : saidOf(line, answer);
    if (said === 'yes') return [control, whenYes];
    if (said === 'partly') return [control, line.partly.state];
    return [control, said === 'no' ? 'absent' : 'not sure'];
  })));
}

function saidOf(line: TickLine, answer: Answer | undefined): unknown {
  if (!Array.isArray(answer)) return typeof answer === 'object' ? (answer as Readonly<Record<string, unknown>>)[line.id] : undefined;
  if (line.newIn !== undefined) return 'not sure';
  if (!answer.includes(line.id)) return 'no';
  return line.fromList ?? 'yes';
}
