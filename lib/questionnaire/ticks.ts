import type { Question, TickLine } from '@/lib/content/model';
import type { Answer, TickAnswer } from '@/lib/core/document';

export type TickQuestion = Extract<Question, { kind: 'ticks' }>;
/** What a line says. */
export type TickSaid = TickAnswer[string];

export const TICK_WORDS = ['yes', 'partly', 'no', 'not sure'] as const satisfies readonly TickSaid[];

export function isTickSaid(value: unknown): value is TickSaid {
  return TICK_WORDS.some((word) => word === value);
}

/**
 * What a line of a page of ticks says; undefined when nobody has answered it. A plain list, as an earlier
 * edition took it, says nothing of a line that came later, nor enough of one that asks for more than it used to.
 * @param notSureTicks lines left open one by one, beside the answer
 */
export function saidOfLine(answer: Answer | undefined, notSureTicks: readonly string[], line: TickLine): TickSaid | undefined {
  if (answer === 'not sure' || notSureTicks.includes(line.id)) return 'not sure';
  if (isList(answer)) return saidInList(answer, line);
  if (typeof answer !== 'object' || !Object.hasOwn(answer, line.id)) return undefined;
  const said: unknown = (answer as Readonly<Record<string, unknown>>)[line.id];
  return isTickSaid(said) ? said : undefined;
}

function saidInList(answer: readonly string[], line: TickLine): TickSaid | undefined {
  if (line.newIn !== undefined) return undefined;
  if (!answer.includes(line.id)) return 'no';
  return line.fromList ?? 'yes';
}

/** @returns an answer in any form, line by line in the order of the question; lines nobody has answered are left out */
export function linesSaid(question: TickQuestion, answer: Answer | undefined, notSureTicks: readonly string[]): TickAnswer {
  return Object.fromEntries(question.options.flatMap((line): [string, TickSaid][] => {
    const said = saidOfLine(answer, notSureTicks, line);
    return said === undefined ? [] : [[line.id, said]];
  }));
}

/** @returns the lines nobody has answered: they count as not sure, and the page is not finished */
export function blankLines(question: TickQuestion, answer: Answer | undefined, notSureTicks: readonly string[]): readonly TickLine[] {
  return question.options.filter((line) => saidOfLine(answer, notSureTicks, line) === undefined);
}

function isList(answer: Answer | undefined): answer is readonly string[] {
  return Array.isArray(answer);
}
