import 'server-only';
import { type AssessmentQuery, narrowed } from '@/lib/assessments/list';
import { type CsvColumn, writeCsv } from '@/lib/csv/write-csv';
import { listVersions, type ListedVersion } from '@/lib/db/assessments/list-assessments';
import { schoolScope } from '@/lib/db/scope';
import { assessmentStateWords } from '@/lib/wording/assessment-states';
import type { Actor } from '../actor';
import { database } from '../database';

export type { ListedVersion };

export interface VersionList {
  readonly rows: readonly ListedVersion[];
  /** how many there are in all, to tell an empty school from a search that found nothing */
  readonly all: number;
}

/** The versions of the actor's school that a search leaves, the newest first. */
export async function listAssessments(actor: Actor, query: AssessmentQuery): Promise<VersionList> {
  const all = await listVersions(database(), schoolScope(actor));
  return { rows: narrowed(all, query), all: all.length };
}

/** The state of a version with whatever stands against it: "signed, suspended". */
export function stateInFull({ state, suspended, reviewAsked }: Pick<ListedVersion, 'state' | 'suspended' | 'reviewAsked'>): string {
  return [assessmentStateWords(state), ...(suspended ? ['suspended'] : []), ...(reviewAsked ? ['review asked'] : [])].join(', ');
}

const day = (at: Date | null): string | null => at?.toISOString().slice(0, 10) ?? null;

const COLUMNS: readonly CsvColumn<ListedVersion>[] = [
  { head: 'Title', cell: (row) => row.title },
  { head: 'Place', cell: (row) => row.siteName },
  { head: 'Version', cell: (row) => row.number },
  { head: 'Season', cell: (row) => row.season },
  { head: 'State', cell: stateInFull },
  { head: 'Prepared by', cell: (row) => row.preparedByName },
  { head: 'Questions answered', cell: (row) => row.answers },
  { head: 'Handed over (UTC)', cell: (row) => day(row.submittedAt) },
  { head: 'Signed (UTC)', cell: (row) => day(row.signedAt) },
  { head: 'In force until', cell: (row) => row.reviewBy },
];

/** The same list as a table for a spreadsheet. */
export async function assessmentsCsv(actor: Actor, query: AssessmentQuery): Promise<string> {
  return writeCsv(COLUMNS, (await listAssessments(actor, query)).rows);
}
