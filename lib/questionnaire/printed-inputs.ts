import type { Content, InputDefinition, Question } from '@/lib/content/model';
import { inputsSetBy } from '@/lib/content/question-sets';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Venue } from '@/lib/core/answers/venue';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import { NOT_SURE } from './answer-fault';

/** Something that stands on paper and changes no figure. */
export interface PrintedInput {
  readonly input: string;
  readonly title: string;
  readonly words: string;
  /** nobody has said it, or nobody has asked */
  readonly open: boolean;
}

/** The value by which an answer says that the question was never put to anybody. */
const NOT_ASKED = 'not asked';

/** What the edition has only for the paper, in the words of the answers; what is open first. */
export function printedInputs(content: Content, { answers, inputs }: Pick<AssessmentDocument, 'answers' | 'inputs'>): readonly PrintedInput[] {
  const document: AssessmentDocument = { id: '', title: '', answers, inputs };
  const venue = resolveVenue(content, document);
  const printed = content.inputs.filter((input) => input.printed === true).flatMap((input) => printedInput(input, document, venue) ?? []);
  return [...printed.filter((one) => one.open), ...printed.filter((one) => !one.open)];
}

/** One of them, or null where its question does not apply. */
function printedInput({ id, title, unit }: InputDefinition, document: AssessmentDocument, { content, inputs, shown }: Venue): PrintedInput | null {
  const question = content.questions.find((candidate) => inputsSetBy(candidate).includes(id));
  if (question !== undefined && !shown.has(question.id)) return null;
  const value = inputs.get(id) ?? '';
  const plain = `${value} ${unit === 'text' || unit === 'word' ? '' : unit}`.trim();
  if (Object.hasOwn(document.inputs ?? {}, id)) return { input: id, title, words: plain, open: value === NOT_ASKED };
  const answer = question === undefined ? undefined : document.answers[question.id];
  if (answer === undefined || answer === '' || answer === NOT_SURE) return { input: id, title, words: answer === NOT_SURE ? NOT_SURE : 'not answered', open: true };
  const label = chosenLabel(question, id, answer);
  // An answer is the answer to its question: beside another title its words would say something else.
  if (question !== undefined && label !== undefined) return { input: id, title: question.text, words: label, open: value === NOT_ASKED };
  return { input: id, title, words: plain, open: value === NOT_ASKED };
}

/** In the words of the answer that set it. */
function chosenLabel(question: Question | undefined, input: string, answer: Answer): string | undefined {
  if (question?.kind !== 'choice') return undefined;
  return question.options.find((option) => option.id === answer && input in option.sets.inputs)?.label;
}
