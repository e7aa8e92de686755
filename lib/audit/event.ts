import type { z } from 'zod';
import { ASSESSMENT_EVENTS } from './events/assessments';
import { DOCUMENT_EVENTS } from './events/documents';
import { INCIDENT_EVENTS } from './events/incidents';
import { PACK_EVENTS } from './events/packs';
import { SCHOOL_EVENTS } from './events/school';

/** What may stand in the log, with the shape of what is kept of each. A kind once written keeps its name and its shape. */
export const EVENT_SCHEMAS = { ...SCHOOL_EVENTS, ...PACK_EVENTS, ...ASSESSMENT_EVENTS, ...DOCUMENT_EVENTS, ...INCIDENT_EVENTS };

type Schemas = typeof EVENT_SCHEMAS;
export type AuditKind = keyof Schemas;

/** One thing that was done, and what it was done to. */
export type AuditEvent = { [K in AuditKind]: { readonly kind: K; readonly subjectId: string; readonly data: z.output<Schemas[K]> } }[AuditKind];

/** Who did it. Without an account (a caretaker by a link, the program itself) `personId` is null. */
export interface AuditAuthor {
  readonly schoolId: string;
  readonly personId: string | null;
  /** copied into the entry, so that it says who it was whatever becomes of the person */
  readonly name: string;
}

/** Returns whether a word is a kind of event. */
export function isAuditKind(word: string): word is AuditKind {
  return Object.hasOwn(EVENT_SCHEMAS, word);
}
