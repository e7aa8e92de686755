import fc from 'fast-check';
import { edition1 } from '@/lib/content/edition-1';
import type { Content, NumberField, Question } from '@/lib/content/model';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import { TICK_WORDS, type TickQuestion } from '@/lib/questionnaire/ticks';

/** Any answer that a form or an older document could give to a question, also none and not sure. */
export function arbitraryAnswer(question: Question): fc.Arbitrary<Answer | undefined> {
  const open = question.notSure ? fc.constantFrom<Answer | undefined>(undefined, 'not sure') : fc.constant(undefined);
  return fc.oneof({ weight: 1, arbitrary: open }, { weight: 4, arbitrary: givenAnswer(question) });
}

function givenAnswer(question: Question): fc.Arbitrary<Answer> {
  switch (question.kind) {
    case 'choice': return fc.constantFrom(...question.options.map((option) => option.id));
    case 'multi': return fc.subarray(question.options.map((option) => option.id));
    case 'ticks': return fc.oneof(linesOf(question), fc.subarray(question.options.filter(({ newIn }) => newIn === undefined).map(({ id }) => id)));
    case 'text': return fc.constantFrom('999, by the gate', '0', '');
    case 'number': return fc.record(Object.fromEntries(question.fields.map((field) => [field.input, numberIn(field)])), { requiredKeys: [] })
      .map((numbers) => partsWithin(question.fields, numbers as Record<string, number>));
  }
}

function linesOf(question: TickQuestion): fc.Arbitrary<Answer> {
  const words = Object.fromEntries(question.options.map(({ id }) => [id, fc.constantFrom(...TICK_WORDS)]));
  return fc.record(words, { requiredKeys: [] }).map((lines) => ({ ...lines }) as Answer);
}

/** Anywhere in the range of a field, its ends among them. */
function numberIn({ min, max }: NumberField): fc.Arbitrary<number> {
  return fc.oneof({ weight: 1, arbitrary: fc.constantFrom(min, max) }, { weight: 4, arbitrary: fc.double({ min, max, noNaN: true }) });
}

function partsWithin(fields: readonly NumberField[], numbers: Readonly<Record<string, number>>): Record<string, number> {
  const most = (input: string): number => numbers[fields.find((field) => field.input === input)?.noMoreThan ?? ''] ?? Infinity;
  return Object.fromEntries(Object.entries(numbers).map(([input, value]) => [input, Math.min(value, most(input))]));
}

/** Any document that the questions of an edition could lead to: every field anywhere in its range, extremes included. */
export function arbitraryDocumentOf(content: Content): fc.Arbitrary<AssessmentDocument> {
  return fc
    .tuple(...content.questions.map((question) => arbitraryAnswer(question).map((answer): readonly [string, Answer | undefined] => [question.id, answer])))
    .map((entries) => ({
      id: 'any',
      title: 'Any room',
      answers: Object.fromEntries(entries.filter((entry): entry is readonly [string, Answer] => entry[1] !== undefined)),
    }));
}

/** Any document of the first edition. */
export const arbitraryDocument: fc.Arbitrary<AssessmentDocument> = arbitraryDocumentOf(edition1);
