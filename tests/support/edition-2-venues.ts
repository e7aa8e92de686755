import { readFileSync } from 'node:fs';
import { edition2 } from '@/lib/content/edition-2';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';
import { score } from '@/lib/core/score';
import type { Assessment } from '@/lib/interchange/assessment-schema';
import { toDocument } from '@/lib/interchange/to-document';
import type { ReferenceVenue } from './reference-venues';

/** Where each room is described for the second edition: three are the examples that everybody gets. */
const FILES: Readonly<Record<ReferenceVenue, string>> = {
  'good-hall': 'public/examples/good-hall.json',
  'ordinary-classroom': 'public/examples/ordinary-classroom.json',
  'bad-store': 'public/examples/bad-store.json',
  everything: 'tests/reference-data/edition-2/everything.json',
};

/** A reference room with the questions of the second edition answered. */
export function secondDocument(venue: ReferenceVenue): AssessmentDocument {
  return toDocument(JSON.parse(readFileSync(FILES[venue], 'utf8')) as Assessment);
}

export function scoreSecond(venue: ReferenceVenue, draws = 300, changes: Partial<AssessmentDocument> = {}): ScoreResult {
  return score(edition2, { ...secondDocument(venue), ...changes }, { seed: 7, draws, inputHash: 'test' });
}
