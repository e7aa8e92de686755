import type { Source } from './page-state';
import type { WholeDocument } from './whole-document';

/** What a person can do with the page. */
export interface Ways {
  readonly open: (whole: WholeDocument, source: Source) => void;
  readonly change: (change: (whole: WholeDocument) => WholeDocument, what: string) => void;
  readonly undo: () => void;
  readonly startAgain: () => void;
}
