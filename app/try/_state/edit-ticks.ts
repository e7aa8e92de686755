import { linesSaid, type TickQuestion, type TickSaid } from '@/lib/questionnaire/ticks';
import { withAnswer } from './edit-document';
import { answerOf, notSureTicksOf, type WholeDocument } from './whole-document';

/** The document with one line answered. Lines nobody has answered stay blank; a plain list becomes lines. */
export function withLine(whole: WholeDocument, question: TickQuestion, line: string, said: TickSaid): WholeDocument {
  const now = { ...linesSaid(question, answerOf(whole, question.id), notSureTicksOf(whole, question.id)), [line]: said };
  const inOrder = question.options.flatMap(({ id }): [string, TickSaid][] => (now[id] === undefined ? [] : [[id, now[id]]]));
  return withAnswer(whole, question.id, Object.fromEntries(inOrder));
}
