import type { Content, InputDefinition, InputValue } from '@/lib/content/model';
import { partFaults } from '@/lib/questionnaire/check-numbers';
import { listed, rangeInWords, sayValue } from '@/lib/questionnaire/say-value';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';
import { type DocumentFault, faultAt } from '../json/fault';
import { entriesOf, memberOf } from '../json/object';
import { expectedId } from './known-ids';

/** Inputs written over that do not exist, whose value no question could give, or that make a part more than its whole. */
export function inputFaults(value: unknown, content: Content): readonly DocumentFault[] {
  const ids = content.inputs.map(({ id }) => id);
  const each = entriesOf(memberOf(value, 'inputs')).flatMap(([id, given]) => {
    const input = content.inputs.find((candidate) => candidate.id === id);
    if (input === undefined) return [faultAt(['inputs', id], 'is not an input of the content', expectedId(id, 'an input', ids))];
    const fault = valueFault(content, input, given);
    return fault === undefined ? [] : [faultAt(['inputs', id], fault.problem, fault.expected)];
  });
  return [...each, ...partsWrittenOver(value, content)];
}

/** A part and its whole of which at least one is written over: the answers by themselves are held to each other already. */
function partsWrittenOver(value: unknown, content: Content): readonly DocumentFault[] {
  const written = new Map(entriesOf(memberOf(value, 'inputs')));
  return content.questions.flatMap((question) => {
    if (question.kind !== 'number') return [];
    const answered = entriesOf(memberOf(memberOf(value, 'answers'), question.id));
    return partFaults(question.fields, new Map([...answered, ...written])).flatMap(({ path: [input = ''], problem, expected }) => {
      const whole = question.fields.find((field) => field.input === input)?.noMoreThan ?? '';
      if (!written.has(String(input)) && !written.has(whole)) return [];
      return [faultAt(written.has(String(input)) ? ['inputs', input] : ['answers', question.id, input], problem, expected)];
    });
  });
}

function valueFault(content: Content, input: InputDefinition, given: unknown): { problem: string; expected: string } | undefined {
  // a value that is written over is known: "not sure" is an answer, not a value
  const asked = content.questions.find((question) => question.kind === 'text' && question.field.input === input.id);
  if (asked !== undefined) {
    const check = validateAnswer({ ...asked, notSure: false }, given);
    return check.ok ? undefined : check.faults[0];
  }
  const choices = isMark(input) ? choicesOf(content, input.id) : [];
  if (choices.length > 0) return choices.some((choice) => choice === given) ? undefined : { problem: sayValue(given), expected: `one of ${inWords(choices)}` };
  const [least, most] = [input.min ?? -Infinity, input.max ?? Infinity];
  if (typeof given === 'number' && given >= least && given <= most) return undefined;
  return { problem: sayValue(given), expected: rangeInWords(least, most, input.unit) };
}

/** A word, or yes and no as 1 and 0. A number that options only round, such as air changes, may be measured. */
const isMark = ({ min, max, unit }: InputDefinition): boolean => unit === '0 or 1' || min === null || max === null;

/** Values that options give an input. */
function choicesOf(content: Content, id: string): readonly InputValue[] {
  const options = content.questions.flatMap((question) => ('options' in question ? question.options : []));
  return [...new Set(options.flatMap(({ sets }) => (Object.hasOwn(sets.inputs, id) ? sets.inputs[id] ?? [] : [])))];
}

const inWords = (choices: readonly InputValue[]): string => {
  const words = choices.filter((choice) => typeof choice === 'string');
  return words.length === choices.length ? listed(words) : choices.join(', ');
};
