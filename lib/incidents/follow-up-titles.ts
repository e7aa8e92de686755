import type { FollowUpKind } from './standing';

/** What somebody adds afterwards, as it is called. */
export const FOLLOW_UP_TITLES: Readonly<Record<FollowUpKind, string>> = {
  cause: 'Cause',
  measure: 'What was done so that it does not come again',
  report: 'Told to whom, and when',
  note: 'Note',
  risk: 'Risk it belongs to',
  review: 'Review',
  closed: 'Closed',
  reopened: 'Opened again',
};
