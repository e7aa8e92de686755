import type { Question } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { answerOf, notSureTicksOf, partOf, plannedOf, type WholeDocument } from './whole-document';

type MultiQuestion = Extract<Question, { kind: 'multi' }>;

/** What one line of a multi question says; "not answered" until the question is touched. */
export type TickState = 'yes' | 'no' | 'not sure' | 'not answered';

/** The document with one answer set, or taken away when `answer` is undefined. Ticks left open go with it. */
export function withAnswer(whole: WholeDocument, question: string, answer: Answer | undefined): WholeDocument {
  const answers = partOf(whole, 'answers');
  // An answer that is there already keeps its place, so that a download differs from what was pasted in that answer only.
  const changed = answer === undefined ? without(answers, question) : { ...answers, [question]: answer };
  return withTicks({ ...whole, answers: changed }, without(partOf(whole, 'notSureTicks'), question));
}

/** What a line of a multi question says today. */
export function tickState(whole: WholeDocument, question: MultiQuestion, option: string): TickState {
  const answer = answerOf(whole, question.id);
  if (answer === 'not sure') return 'not sure';
  if (!Array.isArray(answer)) return 'not answered';
  if (notSureTicksOf(whole, question.id).includes(option)) return 'not sure';
  return answer.includes(option) ? 'yes' : 'no';
}

/**
 * The document with one line of a multi question set. Lines nobody has answered yet become "not sure",
 * never "no": a page half filled in must not read like a considered answer.
 */
export function withTick(whole: WholeDocument, question: MultiQuestion, option: string, state: 'yes' | 'no' | 'not sure'): WholeDocument {
  const stateOf = (id: string): TickState => (id === option ? state : tickState(whole, question, id));
  const ids = question.options.map((each) => each.id);
  const ticked = ids.filter((id) => stateOf(id) === 'yes');
  const open = ids.filter((id) => stateOf(id) === 'not sure' || stateOf(id) === 'not answered');
  const answered = withAnswer(whole, question.id, ticked);
  return withTicks(answered, open.length === 0 ? partOf(answered, 'notSureTicks') : { ...partOf(answered, 'notSureTicks'), [question.id]: open });
}

/** The document with the fields of a number question; fields left empty are left out, never zero. */
export function withNumbers(whole: WholeDocument, question: string, numbers: Readonly<Record<string, number | undefined>>): WholeDocument {
  const given = Object.entries(numbers).flatMap(([input, value]) => (value === undefined ? [] : [[input, value] as const]));
  if (sameNumbers(answerOf(whole, question), given)) return whole;
  return withAnswer(whole, question, given.length === 0 ? undefined : Object.fromEntries(given));
}

/** The document with a control put on the list of planned actions, or taken off it. */
export function withPlanned(whole: WholeDocument, control: string, planned: boolean): WholeDocument {
  const others = plannedOf(whole).filter((id) => id !== control);
  return { ...whole, planned: planned ? [...others, control] : others };
}

/** The document with several controls put on the list of planned actions, in the order given. */
export function withAllPlanned(whole: WholeDocument, controls: readonly string[]): WholeDocument {
  return controls.reduce((document, control) => withPlanned(document, control, true), whole);
}

export function withBudget(whole: WholeDocument, effortBudget: number): WholeDocument {
  return { ...whole, effortBudget };
}

/** Whether these are the numbers that stand there, in whatever order; "not sure" stands while every box is empty. */
function sameNumbers(answer: Answer | undefined, given: readonly (readonly [string, number])[]): boolean {
  if (typeof answer !== 'object' || Array.isArray(answer)) return given.length === 0;
  const standing: Readonly<Record<string, unknown>> = { ...answer };
  return Object.keys(standing).length === given.length && given.every(([input, value]) => standing[input] === value);
}

function without(part: Readonly<Record<string, unknown>>, key: string): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(part).filter(([id]) => id !== key));
}

/** An empty list of open ticks is left out, so that an edit undone by hand gives the same document again. */
function withTicks(whole: WholeDocument, ticks: Readonly<Record<string, unknown>>): WholeDocument {
  if (Object.keys(ticks).length > 0) return { ...whole, notSureTicks: ticks };
  return Object.fromEntries(Object.entries(whole).filter(([name]) => name !== 'notSureTicks'));
}
