import type { Content, InputValue } from '@/lib/content/model';

const NUMBER = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 4 });
/** What an edition writes where nothing was said and nothing is taken. */
const OPEN = 'open';
const WITHOUT_UNIT: readonly string[] = ['word', 'text', 'light, ordinary or heavy'];

/** The value of an input as a person says it: yes or no for a mark of 0 or 1, the words of the answer that sets it for a code. */
export function inputWords(content: Content, input: string, value: InputValue, unit: string): string {
  if (unit === '0 or 1') return value === 1 ? 'yes' : 'no';
  if (unit === 'word') return optionLabel(content, input, value) ?? (value === OPEN ? 'not known' : String(value));
  const figure = typeof value === 'number' ? NUMBER.format(value) : value;
  return WITHOUT_UNIT.includes(unit) ? figure : `${figure} ${unit}`;
}

function optionLabel({ questions }: Content, input: string, value: InputValue): string | undefined {
  return questions.flatMap((question) => (question.kind === 'choice' ? question.options : [])).find((option) => option.sets.inputs[input] === value)?.label;
}
