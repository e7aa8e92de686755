import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';
import type { Assessment } from '@/lib/interchange/assessment-schema';

const LARGEST_FILE = 900_000;

/** An assessment document to begin a draft from. */
export const ImportInputSchema = z.object({
  siteId: line('Choose the place'),
  season: optionalLine(40),
  file: z.file('Choose a file').max(LARGEST_FILE, 'This file is larger than any assessment'),
  /** said once the page has told what of the file stays behind */
  without: z.literal('yes').optional(),
});
export type ImportInput = z.output<typeof ImportInputSchema>;

const NOT_TAKEN = { inputs: 'figures written over the answers', states: 'states of controls written over the answers', exposures: 'counted exposures', record: 'the school’s own record of events', planned: 'planned actions', areas: 'the list of rooms', packs: 'the list of packs', seed: 'a seed of its own' } as const;

/** Parts of a document that a draft has no place for, in words: here they come from actions, registers and the log. */
export function notTaken(assessment: Assessment): readonly string[] {
  const names = (Object.keys(NOT_TAKEN) as (keyof typeof NOT_TAKEN)[]).filter((name) => hasContent(assessment[name]));
  return [...names.map((name) => NOT_TAKEN[name]), ...(typeof assessment.matrix === 'object' ? ['a matrix of its own'] : [])];
}

function hasContent(part: unknown): boolean {
  if (part === undefined) return false;
  return typeof part !== 'object' || part === null || Object.keys(part).length > 0;
}
