import { readFileSync } from 'node:fs';
import type { AssessmentDocument } from '@/lib/core/document';
import { edition1 } from '@/lib/content/edition-1';
import type { ScoreResult } from '@/lib/core/result';
import { score } from '@/lib/core/score';

/** The four venues for which an independent implementation of the first edition computed every value. */
export const REFERENCE_VENUES = ['good-hall', 'ordinary-classroom', 'bad-store', 'everything'] as const;
export type ReferenceVenue = (typeof REFERENCE_VENUES)[number];

/** What the independent implementation wrote; its names are those of the result, some beside them. */
export interface ExpectedVenue extends Pick<ScoreResult, 'totalHarm' | 'inherentHarm' | 'batteryFiresPerSeason' | 'harmByConsequence' | 'smoke' | 'heat' | 'derived'> {
  readonly venue: string;
  readonly totalHarmDraws: { readonly mean: number; readonly p05: number; readonly p50: number; readonly p95: number };
  readonly risks: readonly (Omit<ScoreResult['risks'][number], 'branches' | 'controls'> & {
    readonly branches: readonly { readonly id: string; readonly frequency: number; readonly severity: number; readonly harm: number; readonly expectedWeight: number; readonly grade: string; readonly score: number; readonly level: number }[];
  })[];
  readonly stops: readonly { readonly id: string; readonly why: string }[];
  readonly actions: readonly { readonly control: string; readonly state: string; readonly harmReduction: number; readonly share: number; readonly effort: number }[];
  readonly bestSet: { readonly controls: readonly string[]; readonly effort: number; readonly harmBefore: number; readonly harmAfter: number; readonly cut: number };
  readonly battery: { readonly packWh: number; readonly airClass: string; readonly totalWh: number };
  readonly assumedInputs: readonly string[];
}

const read = (name: string): unknown => JSON.parse(readFileSync(new URL(`../reference-data/${name}`, import.meta.url), 'utf8'));

export const referenceDocument = (venue: ReferenceVenue): AssessmentDocument => read(`${venue}.json`) as AssessmentDocument;
export const expectedOf = (venue: ReferenceVenue): ExpectedVenue => read(`${venue}.expected.json`) as ExpectedVenue;

export function scoreReference(venue: ReferenceVenue, draws = 500, changes: Partial<AssessmentDocument> = {}): ScoreResult {
  return score(edition1, { ...referenceDocument(venue), ...changes }, { seed: 7, draws, inputHash: 'test' });
}
