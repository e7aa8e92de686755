import fc from 'fast-check';
import { edition1 } from '@/lib/content/edition-1';
import type { Question } from '@/lib/content/model';
import type { Answer, AssessmentDocument } from '@/lib/core/document';

/** Any answer that a form could give to a question, also none and not sure. */
function arbitraryAnswer(question: Question): fc.Arbitrary<Answer | undefined> {
  const open = fc.constantFrom<Answer | undefined>(undefined, 'not sure');
  switch (question.kind) {
    case 'choice': return fc.oneof({ weight: 1, arbitrary: open }, { weight: 4, arbitrary: fc.constantFrom(...question.options.map((option) => option.id)) });
    case 'multi':
    case 'ticks': return fc.oneof({ weight: 1, arbitrary: open }, { weight: 4, arbitrary: fc.subarray(question.options.map((option) => option.id)) });
    case 'text': return fc.oneof(open, fc.constant('999, by the gate'));
    case 'number': {
      const fields = Object.fromEntries(question.fields.map((field) => [field.input, fc.oneof(
        { weight: 1, arbitrary: fc.constantFrom(field.min, field.max) },
        { weight: 4, arbitrary: fc.double({ min: field.min, max: field.max, noNaN: true }) },
      )]));
      return fc.oneof({ weight: 1, arbitrary: open }, { weight: 4, arbitrary: fc.record(fields, { requiredKeys: [] }) as fc.Arbitrary<Record<string, number>> });
    }
  }
}

/** Any document that the questions could lead to: every field anywhere in its range, extremes included. */
export const arbitraryDocument: fc.Arbitrary<AssessmentDocument> = fc
  .tuple(...edition1.questions.map((question) => arbitraryAnswer(question).map((answer): readonly [string, Answer | undefined] => [question.id, answer])))
  .map((entries) => ({
    id: 'any',
    title: 'Any room',
    answers: Object.fromEntries(entries.filter((entry): entry is readonly [string, Answer] => entry[1] !== undefined)),
  }));
