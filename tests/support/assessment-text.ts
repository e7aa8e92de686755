import { readFileSync } from 'node:fs';
import { FORMAT } from '@/lib/interchange/assessment-schema';

type Fields = Record<string, unknown>;

/** A reference venue as a full document; the files themselves carry no `format`. */
export function venueDocument(venue: string): Fields {
  return { format: FORMAT, ...(JSON.parse(readFileSync(`tests/reference-data/${venue}.json`, 'utf8')) as Fields) };
}

/** The smallest document there is, with some parts changed. */
export function smallDocument(changes: Fields = {}): Fields {
  return { format: FORMAT, id: 'small', title: 'Nothing answered', answers: {}, ...changes };
}
