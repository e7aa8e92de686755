import type { Content, Question } from '@/lib/content/model';
import { listed, quoted, sayValue } from '@/lib/questionnaire/say-value';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';
import { type DocumentFault, faultAt } from '../json/fault';
import { entriesOf, itemsOf, memberOf } from '../json/object';
import { expectedId } from './known-ids';

/** Answers to questions nobody asks, and answers that their question cannot take. */
export function answerFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return byQuestion(value, 'answers', content, (question, answer) => {
    const check = validateAnswer(question, answer);
    return check.ok ? [] : check.faults.map(({ path, problem, expected }) => faultAt(['answers', question.id, ...path], problem, expected));
  });
}

/** Options said to be not known (amendment A47): of a multi question, existing, once, and not ticked as well. */
export function tickFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return byQuestion(value, 'notSureTicks', content, (question, ticks) => {
    const place = ['notSureTicks', question.id];
    if (question.kind !== 'multi') return [faultAt(place, 'belongs to a question that takes one answer', `"not sure" as the answer to ${quoted(question.id)}`)];
    const check = validateAnswer(question, ticks);
    if (ticks === 'not sure' || !Array.isArray(ticks)) return [faultAt(place, sayValue(ticks), `a list of any of ${listed(question.options.map(({ id }) => id))}`)];
    const shape = check.ok ? [] : check.faults.map(({ path, problem, expected }) => faultAt([...place, ...path], problem, expected));
    const ticked = itemsOf(memberOf(memberOf(value, 'answers'), question.id));
    const both = ticks.flatMap((id, at) => (ticked.includes(id) ? [faultAt([...place, at], `${sayValue(id)}, which is ticked in the answer too`, 'ticked or not sure, not both')] : []));
    return [...shape, ...both];
  });
}

function byQuestion(
  value: unknown,
  part: string,
  content: Content,
  check: (question: Question, entry: unknown) => readonly DocumentFault[],
): readonly DocumentFault[] {
  const ids = content.questions.map(({ id }) => id);
  return entriesOf(memberOf(value, part)).flatMap(([id, entry]) => {
    const question = content.questions.find((candidate) => candidate.id === id);
    return question === undefined ? [faultAt([part, id], 'is not a question of the content', expectedId(id, 'a question', ids))] : check(question, entry);
  });
}
