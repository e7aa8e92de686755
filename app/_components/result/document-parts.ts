import type { AssessmentDocument } from '@/lib/core/document';

/** What the parts of a result read of the document it was worked out from. */
export type DocumentParts = Pick<AssessmentDocument, 'answers' | 'inputs'>;

/** Where the question of an answer is to be found: on the same page, or on the page of the walk it stands on. */
export type QuestionAddress = (questionId: string) => string;
