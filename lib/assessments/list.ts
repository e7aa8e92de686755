import { z } from 'zod';
import type { AssessmentState } from './standing';

/** What a list is narrowed to. `current`: all but those that were replaced or withdrawn. */
export const SHOWN_STATES = ['current', 'draft', 'with-officer', 'returned', 'signed', 'superseded', 'withdrawn', 'all'] as const;
export type ShownState = (typeof SHOWN_STATES)[number];

/** Search and filter as an address holds them; what cannot be read narrows nothing. */
export const AssessmentQuerySchema = z.object({ q: z.string().trim().max(200).catch(''), state: z.enum(SHOWN_STATES).catch('current') });
export type AssessmentQuery = z.output<typeof AssessmentQuerySchema>;

interface Listed { readonly title: string; readonly siteName: string; readonly season: string; readonly preparedByName: string; readonly state: AssessmentState }

/** The versions that a search and a filter leave; every word of the search has to stand somewhere in the row. */
export function narrowed<Row extends Listed>(rows: readonly Row[], { q, state }: AssessmentQuery): readonly Row[] {
  const words = q.toLowerCase().split(/\s+/u).filter((word) => word !== '');
  return rows.filter((row) => isShown(row.state, state) && words.every((word) => [row.title, row.siteName, row.season, row.preparedByName].some((text) => text.toLowerCase().includes(word))));
}

function isShown(state: AssessmentState, shown: ShownState): boolean {
  if (shown === 'all') return true;
  return shown === 'current' ? state !== 'superseded' && state !== 'withdrawn' : state === shown;
}
