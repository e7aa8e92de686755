import { randomUUID } from 'node:crypto';
import type { AuditEvent } from '@/lib/audit/event';
import { acceptLine, sendBack, signAsOfficer, submit } from '@/lib/events/lifecycle';
import type { EventRecord } from '@/lib/events/event';
import type { EventStanding } from '@/lib/events/standing';
import type { Db } from '../client';
import { countersign, type Countersigned, keepDocument, type MadeSignature } from '../documents/keep-document';
import { waitingPaperOf } from '../documents/read-document';
import { type NewDocument, sha256Of } from '../documents/write-document';
import type { Member } from '../people/find-member';
import { changeEvent, type EventChanged, type EventWriting, refusedEvent } from './change-event';

/** Where an event stands, read in the transaction that moves it. */
async function standingOf({ tx, scope }: EventWriting, { id, state, preparedById, officerId }: EventRecord): Promise<EventStanding> {
  const waiting = await waitingPaperOf(tx, scope, { kind: 'event', eventId: id });
  return { state, preparerId: preparedById, officerId, preparerSigned: waiting !== null };
}

export interface HandedOver {
  readonly eventId: string;
  /** revision of the event that the file was made from */
  readonly revision: number;
  readonly officerId: string;
  /** the assessment it was held against; null when there is none */
  readonly versionId: string | null;
  readonly document: NewDocument;
  readonly signature: MadeSignature;
}

/** Hands an event to the officer with the preparer's signature: event, file, signature and log entries, all or nothing. */
export function handOverEvent(db: Db, by: Member, at: Date, { eventId, revision, officerId, versionId, document, signature }: HandedOver): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.submit', revision }, async (writing, event) => {
    const move = submit(await standingOf(writing, event), by.personId);
    if (!move.ok) return refusedEvent(move.why);
    const kept = await keepDocument(writing.tx, writing.scope, at, document, signature, 'part-signed');
    const again = event.state === 'with-officer';
    return {
      ok: true, data: { state: move.to, officerId, versionId, submittedAt: at },
      events: [...kept, ...(again ? [] : [{ kind: 'event.submitted' as const, subjectId: eventId, data: {} }]), signedEvent(eventId, 'preparer', document.id, document.bytes.at(-1))],
    };
  });
}

function signedEvent(subjectId: string, part: 'preparer' | 'officer', documentId: string, bytes: Uint8Array | undefined): AuditEvent {
  return { kind: 'event.signed', subjectId, data: { part, documentId, sha256: sha256Of(bytes ?? new Uint8Array()) } };
}

/** Returns an event to its preparer; the file it was handed over with is void. */
export function returnEvent(db: Db, by: Member, at: Date, eventId: string, reason: string): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.return' }, async (writing, event) => {
    const move = sendBack(await standingOf(writing, event), by.personId, reason);
    if (!move.ok) return refusedEvent(move.why);
    await voidWaiting(writing, eventId);
    return { ok: true, data: { state: move.to, returnedAt: at, returnedReason: reason }, events: [{ kind: 'event.returned', subjectId: eventId, data: { reason } }] };
  });
}

export interface Accepted { readonly lineId: string; readonly words: string; readonly reason: string; /** as the check stands now */ readonly line: { readonly mayBeAccepted: boolean; readonly open: boolean } | null }

/** Lets a line of the check stand, in writing. A file that was signed before says otherwise, and is void. */
export function acceptLineOf(db: Db, by: Member, at: Date, eventId: string, { lineId, words, reason, line }: Accepted): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.accept-line' }, async (writing, event) => {
    const move = acceptLine(await standingOf(writing, event), by.personId, line);
    if (!move.ok) return refusedEvent(move.why);
    const { tx, scope } = writing;
    await tx.eventAcceptance.updateMany({ where: { ...scope, eventId, lineId, endedAt: null }, data: { endedAt: at } });
    await tx.eventAcceptance.create({ data: { ...scope, id: randomUUID(), eventId, lineId, words, reason, byId: by.personId, byName: by.name, at } });
    await voidWaiting(writing, eventId);
    return { ok: true, data: {}, events: [{ kind: 'event.line-accepted', subjectId: eventId, data: { lineId, reason } }] };
  });
}

async function voidWaiting({ tx, scope, at }: EventWriting, eventId: string): Promise<void> {
  await tx.document.updateMany({ where: { ...scope, eventId, kind: 'event', state: 'part-signed', replacedAt: null }, data: { replacedAt: at } });
}

export interface SignedOff { readonly eventId: string; readonly revision: number; readonly openLines: readonly string[]; readonly file: Countersigned; readonly signature: MadeSignature }

/** The officer's signature, which makes it the venue's file. */
export function signEvent(db: Db, by: Member, at: Date, { eventId, revision, openLines, file, signature }: SignedOff): Promise<EventChanged> {
  return changeEvent(db, by, at, { eventId, may: 'event.sign-as-officer', revision }, async (writing, event) => {
    const move = signAsOfficer(await standingOf(writing, event), by.personId, openLines);
    if (!move.ok) return refusedEvent(move.why);
    const signed = await countersign(writing.tx, writing.scope, at, file, signature);
    if (signed === null) return refusedEvent('The file has changed since you opened it. Read the new one, then sign');
    return { ok: true, data: { state: move.to, signedAt: at }, events: [...signed, signedEvent(eventId, 'officer', file.documentId, file.bytes)] };
  });
}
