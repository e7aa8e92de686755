import { createHash } from 'node:crypto';
import { canonicalJson } from './canonical-json';
import { EVENT_SCHEMAS, type AuditAuthor, type AuditEvent } from './event';

/** An entry as it is kept. */
export interface ChainEntry {
  readonly schoolId: string;
  /** 1, 2, 3 … without a gap */
  readonly sequence: number;
  readonly at: Date;
  readonly kind: string;
  readonly actorId: string | null;
  readonly actorName: string;
  readonly subjectId: string;
  /** canonical JSON of the event's data */
  readonly dataJson: string;
  readonly previousHash: string;
  readonly hash: string;
}

/** The last number and hash of a chain. */
export interface ChainEnd { readonly sequence: number; readonly hash: string }

/** Before the first entry. */
export const CHAIN_START: ChainEnd = { sequence: 0, hash: '0'.repeat(64) };

/**
 * Returns the entry that follows `end`. Throws when the data is not of the shape of its kind: an entry that cannot be
 * read later must not be written.
 */
export function nextEntry(end: ChainEnd, by: AuditAuthor, at: Date, event: AuditEvent): ChainEntry {
  const data: unknown = EVENT_SCHEMAS[event.kind].parse(event.data);
  const entry = {
    schoolId: by.schoolId,
    sequence: end.sequence + 1,
    at,
    kind: event.kind,
    actorId: by.personId,
    actorName: by.name,
    subjectId: event.subjectId,
    dataJson: canonicalJson(data),
    previousHash: end.hash,
  };
  return { ...entry, hash: entryHash(entry) };
}

/**
 * Returns the hash of an entry: SHA-256, in hexadecimal, over the canonical JSON (RFC 8785) of all its columns but the
 * hash itself; the time as ISO 8601 in UTC with milliseconds, the data as the text it is kept as.
 */
export function entryHash({ schoolId, sequence, at, kind, actorId, actorName, subjectId, dataJson, previousHash }: Omit<ChainEntry, 'hash'>): string {
  const text = canonicalJson({ schoolId, sequence, at: at.toISOString(), kind, actorId, actorName, subjectId, dataJson, previousHash });
  return createHash('sha256').update(text, 'utf8').digest('hex');
}
