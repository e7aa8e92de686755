import { can } from '@/lib/access/can';
import type { ActionOnCase } from '@/lib/access/table';
import type { AuditEvent } from '@/lib/audit/event';
import type { EventRecord } from '@/lib/events/event';
import { isOpen } from '@/lib/events/standing';
import type { Fault } from '@/lib/forms/form-state';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Prisma } from '../generated/sqlite/client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';
import { findEvent } from './read-events';

/** Who writes, when, and in which school; inside of one transaction. */
export interface EventWriting { readonly tx: Tx; readonly scope: SchoolScope; readonly by: Member; readonly at: Date }

export type EventChanged = { readonly ok: true; readonly id: string } | { readonly ok: false; readonly faults: readonly Fault[] };

/** The same of an event that was there before: the revision it has now, and what is said of the change where the page stays. */
export type EventWritten = { readonly ok: true; readonly id: string; readonly revision: number; readonly said?: string } | { readonly ok: false; readonly faults: readonly Fault[] };

/** What a change comes to: columns and events, or why it is not made. */
export type EventAttempt = { readonly ok: true; readonly data: Prisma.EventUncheckedUpdateManyInput; readonly events: readonly AuditEvent[]; readonly said?: string } | { readonly ok: false; readonly faults: readonly Fault[] };

interface Asked { readonly eventId: string; readonly may: Extract<ActionOnCase, `event.${string}`>; /** of the state the form was filled from; left out where the state itself decides */ readonly revision?: number }

const NO_SUCH = 'Your school has no such event';
const NOT_YOURS = 'Somebody else prepares this event, and it is for them to do this';
const OVERTAKEN = 'Somebody else changed this event since you opened it. Open it again in another window; what you typed still stands here';

/** A reason that belongs to a field, or to the form as a whole. */
export function refusedEvent(message: string, field: string | null = null): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: [{ field, message }] };
}

/**
 * Reads an event, asks whether this person may, whether it is still as they saw it, and makes the change with its events
 * in one transaction. Two at once: the second is done again on what the first has left, and is then told.
 */
export async function changeEvent(db: Db, by: Member, at: Date, { eventId, may, revision }: Asked, change: (writing: EventWriting, event: EventRecord) => Promise<EventAttempt>): Promise<EventWritten> {
  const scope = schoolScope(by);
  return recordChange<EventWritten>(db, by, at, async (tx) => {
    const event = await findEvent(tx, scope, eventId);
    if (event === null) return { value: refusedEvent(NO_SUCH), events: [] };
    if (!can(by.role, may, { actor: by, on: { schoolId: scope.schoolId, byId: event.preparedById } })) return { value: refusedEvent(NOT_YOURS), events: [] };
    if (revision !== undefined && revision !== event.revision) return { value: refusedEvent(OVERTAKEN), events: [] };
    const attempt = await change({ tx, scope, by, at }, event);
    if (!attempt.ok) return { value: attempt, events: [] };
    await writeColumns(tx, scope, event, attempt.data);
    return { value: { ok: true, id: event.id, revision: event.revision + 1, said: attempt.said }, events: attempt.events };
  });
}

/** Writes columns of an event that nobody changed since it was read in this transaction. */
export async function writeColumns(tx: Tx, scope: SchoolScope, { id, revision }: Pick<EventRecord, 'id' | 'revision'>, data: Prisma.EventUncheckedUpdateManyInput): Promise<void> {
  const { count } = await tx.event.updateMany({ where: { ...scope, id, revision }, data: { ...data, revision: { increment: 1 } } });
  if (count !== 1) throw new MetAnother('The event was changed at the same moment');
}

/** Why an event cannot be written in, or null. */
export function whyClosed({ state }: Pick<EventRecord, 'state'>): string | null {
  if (isOpen(state)) return null;
  return state === 'with-officer' ? 'It lies with the safety officer. Once it is returned, it can be changed' : 'This event is closed. Copy it, and change the copy';
}
