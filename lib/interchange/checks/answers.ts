import type { Content, Question } from '@/lib/content/model';
import { checkList } from '@/lib/questionnaire/check-list';
import { listed, quoted, sayValue } from '@/lib/questionnaire/say-value';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';
import { type DocumentFault, faultAt } from '../json/fault';
import type { Path } from '../json/json-path';
import { entriesOf, itemsOf, memberOf } from '../json/object';
import { expectedId } from './known-ids';

/** Answers to questions nobody asks, and answers that their question cannot take. */
export function answerFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return byQuestion(value, 'answers', content, (question, answer) => {
    const check = validateAnswer(question, answer);
    return check.ok ? [] : check.faults.map(({ path, problem, expected }) => faultAt(['answers', question.id, ...path], problem, expected));
  });
}

/** Options or lines said to be not known (amendment A47): of a question that takes several, existing, once, and not answered as well. */
export function tickFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return byQuestion(value, 'notSureTicks', content, (question, ticks) => {
    const place = ['notSureTicks', question.id];
    if (question.kind !== 'multi' && question.kind !== 'ticks') return [faultAt(place, 'belongs to a question that takes one answer', `"not sure" as the answer to ${quoted(question.id)}`)];
    if (!Array.isArray(ticks)) return [faultAt(place, sayValue(ticks), `a list of any of ${listed(question.options.map(({ id }) => id))}`)];
    // a line that came later may be left open one by one too, so the options count without their edition
    const check = checkList(question.options.map(({ id, label, sets }) => ({ id, label, sets })), ticks);
    const shape = check.ok ? [] : check.faults.map(({ path, problem, expected }) => faultAt([...place, ...path], problem, expected));
    const answer = memberOf(memberOf(value, 'answers'), question.id);
    return [...shape, ...ticks.flatMap((id, at) => saidTwice(answer, id, [...place, at]))];
  });
}

/** Ticked in a list, or given another word line by line. */
function saidTwice(answer: unknown, id: unknown, place: Path): readonly DocumentFault[] {
  const said = typeof id === 'string' ? memberOf(answer, id) : undefined;
  if (itemsOf(answer).includes(id)) return [faultAt(place, `${sayValue(id)}, which is ticked in the answer too`, 'ticked or not sure, not both')];
  if (said === undefined || said === 'not sure') return [];
  return [faultAt(place, `${sayValue(id)}, to which the answer says ${typeof said === 'string' ? quoted(said) : 'something else'}`, 'one or the other, not both')];
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
