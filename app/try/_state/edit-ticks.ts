import type { Question, TickLine } from '@/lib/content/model';
import type { TickAnswer } from '@/lib/core/document';
import { withAnswer } from './edit-document';
import { answerOf, notSureTicksOf, type WholeDocument } from './whole-document';

export type TickQuestion = Extract<Question, { kind: 'ticks' }>;
/** What a line says. */
export type TickSaid = TickAnswer[string];

const SAID: readonly unknown[] = ['yes', 'partly', 'no', 'not sure'] satisfies readonly TickSaid[];
const isSaid = (value: unknown): value is TickSaid => SAID.includes(value);

/**
 * What a line says today, undefined when nobody has answered it. A plain list, as an earlier edition took it,
 * says nothing of a line that came later, nor enough of one that asks for more than it used to.
 */
export function saidOfLine(whole: WholeDocument, question: TickQuestion, line: TickLine): TickSaid | undefined {
  const answer: unknown = answerOf(whole, question.id);
  if (answer === 'not sure' || notSureTicksOf(whole, question.id).includes(line.id)) return 'not sure';
  if (Array.isArray(answer)) return saidInList(answer, line);
  if (typeof answer !== 'object' || answer === null) return undefined;
  const said: unknown = (answer as Readonly<Record<string, unknown>>)[line.id];
  return isSaid(said) ? said : undefined;
}

function saidInList(answer: readonly unknown[], line: TickLine): TickSaid | undefined {
  if (line.newIn !== undefined) return undefined;
  if (!answer.includes(line.id)) return 'no';
  return line.fromList ?? 'yes';
}

/** The document with one line answered. Lines nobody has answered stay blank; a plain list becomes lines. */
export function withLine(whole: WholeDocument, question: TickQuestion, line: string, said: TickSaid): WholeDocument {
  const lines = question.options.flatMap((option): [string, TickSaid][] => {
    const now = option.id === line ? said : saidOfLine(whole, question, option);
    return now === undefined ? [] : [[option.id, now]];
  });
  return withAnswer(whole, question.id, Object.fromEntries(lines));
}

/** Lines that nobody has answered. */
export function blankLines(whole: WholeDocument, question: TickQuestion): readonly TickLine[] {
  return question.options.filter((line) => saidOfLine(whole, question, line) === undefined);
}
