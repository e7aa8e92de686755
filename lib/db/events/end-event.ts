import { cancel, reopen, withdraw } from '@/lib/events/lifecycle';
import type { EventRecord } from '@/lib/events/event';
import type { Db } from '../client';
import { withdrawDocuments } from '../documents/keep-document';
import type { Member } from '../people/find-member';
import { changeEvent, type EventChanged, refusedEvent } from './change-event';

const standing = ({ state, preparedById, officerId }: EventRecord) => ({ state, preparerId: preparedById, officerId, preparerSigned: true });

/** Takes a signed file back: the event, every paper of it, and with them what its links and numbers say. */
export function withdrawEvent(db: Db, by: Member, at: Date, eventId: string, reason: string): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.withdraw' }, async ({ tx, scope }, event) => {
    const move = withdraw(standing(event), reason);
    if (!move.ok) return refusedEvent(move.why);
    const papers = await withdrawDocuments(tx, scope, by.personId, at, { eventId }, reason);
    return { ok: true, data: { state: move.to, withdrawnAt: at, withdrawnReason: reason }, events: [{ kind: 'event.withdrawn', subjectId: eventId, data: { reason } }, ...papers] };
  });
}

/** Calls an event off; its papers are withdrawn with it. */
export function cancelEvent(db: Db, by: Member, at: Date, eventId: string, reason: string): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.cancel' }, async ({ tx, scope }, event) => {
    const move = cancel(standing(event), reason);
    if (!move.ok) return refusedEvent(move.why);
    const papers = await withdrawDocuments(tx, scope, by.personId, at, { eventId }, `Called off: ${reason}`);
    return { ok: true, data: { state: move.to, cancelledAt: at, cancelledReason: reason }, events: [{ kind: 'event.cancelled', subjectId: eventId, data: { reason } }, ...papers] };
  });
}

/** Opens a signed event again, so that another file can take the place of this one. */
export function reopenEvent(db: Db, by: Member, at: Date, eventId: string): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.change' }, (_writing, event) => {
    const move = reopen(standing(event));
    return Promise.resolve(move.ok ? { ok: true, data: { state: move.to, signedAt: null }, events: [{ kind: 'event.taken-back', subjectId: eventId, data: {} }] } : refusedEvent(move.why));
  });
}
