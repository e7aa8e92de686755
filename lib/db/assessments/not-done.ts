import type { AuditEvent } from '@/lib/audit/event';

/** Why nothing was done, in words for the person who asked. */
export interface NotDone { readonly ok: false; readonly why: string }
export type Done = { readonly ok: true } | NotDone;

export const notDone = (why: string): NotDone => ({ ok: false, why });
export const NOT_THERE = notDone('This assessment is not there.');
export const OVERTAKEN = notDone('Somebody changed this assessment while you were at it. Look at it again, then do it once more.');

/** What a transaction comes to, for `recordChange`: the answer, and the events that go into the log. */
export interface Written<Answer = Done> { readonly value: Answer; readonly events: readonly AuditEvent[] }
/** A refusal leaves nothing in the log. */
export const nothing = (value: NotDone): Written<NotDone> => ({ value, events: [] });
