import type { Answer } from '@/lib/core/document';

/** What is wrong with one answer, where in the answer, and what would be right. */
export interface AnswerFault {
  /** keys and indexes from the answer down; empty for the answer as a whole */
  readonly path: readonly (string | number)[];
  readonly problem: string;
  readonly expected: string;
}
export type AnswerCheck = { readonly ok: true; readonly answer: Answer } | { readonly ok: false; readonly faults: readonly AnswerFault[] };

export const NOT_SURE = 'not sure';

export const wrong = (...faults: readonly AnswerFault[]): AnswerCheck => ({ ok: false, faults });
