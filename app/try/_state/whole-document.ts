import type { Answer, AssessmentDocument } from '@/lib/core/document';

/**
 * A `sandbucket-assessment.v1` document as the page keeps it: the whole JSON object, with the parts the
 * calculation never reads, so that what was pasted comes out of the download again.
 */
export type WholeDocument = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * The document inside a text that has already been accepted by `readAssessment`.
 * @throws when the text is no JSON object: then it was never accepted, and the caller is wrong
 */
export function wholeFrom(text: string): WholeDocument {
  const value: unknown = JSON.parse(text);
  if (!isObject(value)) throw new Error('an accepted document is a JSON object');
  return value;
}

/** The text that the worker reads, the download holds and the command scores: one form for all three. */
export function textOf(whole: WholeDocument): string {
  return `${JSON.stringify(whole, null, 2)}\n`;
}

export function titleOf(whole: WholeDocument): string {
  return typeof whole['title'] === 'string' && whole['title'] !== '' ? whole['title'] : 'Untitled room';
}

/** The answer to one question as it stands, or undefined when it is not answered. */
export function answerOf(whole: WholeDocument, question: string): Answer | undefined {
  const answers = whole['answers'];
  if (!isObject(answers) || !Object.hasOwn(answers, question)) return undefined;
  return answers[question] as Answer;
}

/** Options of a multi question that were left open one by one. */
export function notSureTicksOf(whole: WholeDocument, question: string): readonly string[] {
  const ticks = whole['notSureTicks'];
  const list: unknown = isObject(ticks) && Object.hasOwn(ticks, question) ? ticks[question] : undefined;
  return Array.isArray(list) ? list.filter((id): id is string => typeof id === 'string') : [];
}

export function plannedOf(whole: WholeDocument): readonly string[] {
  const planned = whole['planned'];
  return Array.isArray(planned) ? planned.filter((id): id is string => typeof id === 'string') : [];
}

/** A part of the document that is an object by id, empty when it is missing. */
export function partOf(whole: WholeDocument, name: 'answers' | 'notSureTicks' | 'states' | 'inputs' | 'exposures' | 'record'): Readonly<Record<string, unknown>> {
  const part = whole[name];
  return isObject(part) ? part : {};
}

/** Answers and written figures of a document that has been read already, so that its parts have the shapes of the format. */
export function documentParts(whole: WholeDocument): Pick<AssessmentDocument, 'answers' | 'inputs'> {
  return { answers: partOf(whole, 'answers'), inputs: partOf(whole, 'inputs') } as Pick<AssessmentDocument, 'answers' | 'inputs'>;
}
