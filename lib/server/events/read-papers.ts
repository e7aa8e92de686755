import 'server-only';
import { randomUUID } from 'node:crypto';
import { can } from '@/lib/access/can';
import { keepDocument } from '@/lib/db/documents/keep-document';
import { recordChange } from '@/lib/db/audit/record-change';
import { dataOf, fileOf, keptPaperOf, papersOf, type StoredFile, waitingPaperOf } from '@/lib/db/documents/read-document';
import { signerDetails } from '@/lib/db/assessments/paper-material';
import { schoolScope } from '@/lib/db/scope';
import type { Paper } from '@/lib/papers/paper';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { beginPaper } from '../papers/begin-paper';
import { bothSigners } from '../papers/both-signers';
import { newDocumentNumber } from '../papers/document-number';
import { fingerprintOfPaper, packPaper, unpackPaper } from '../papers/paper-data';
import type { EventInFull } from './event-in-full';
import { eventInFull } from './gather';
import { eventFactsFor, type EventSigners, previewOf } from './makings';
import { EVENT_PAPERS, type EventPaperKind } from './paper-kinds';

/** Every paper of an event, the latest first. */
export async function papersOfEvent(actor: Actor, eventId: string) {
  return can(actor.role, 'document.read') ? papersOf(database(), schoolScope(actor), { eventId }) : [];
}

/** The stored file of an event's latest paper of a kind, or of the one of a number. */
export async function eventPaperFile(actor: Actor, eventId: string, kind: EventPaperKind, number?: string): Promise<StoredFile | null> {
  return can(actor.role, 'document.read') ? fileOf(database(), schoolScope(actor), { kind, eventId }, number) : null;
}

/** What the latest paper of a kind says, out of the data its file was made from; of one that is signed by nobody, as it would be made now when none was. */
export async function eventPaperShown(actor: Actor, eventId: string, kind: EventPaperKind): Promise<{ readonly paper: Paper; readonly kept: boolean } | null> {
  if (!can(actor.role, 'document.read')) return null;
  const data = await dataOf(database(), schoolScope(actor), { kind, eventId });
  if (data !== null && kind === 'event') return { paper: unpackPaper(data), kept: true };
  const full = await eventInFull(actor, eventId);
  if (full === null) return null;
  return { paper: await previewOf(full, await anySigners(actor, full), kind), kept: false };
}

/** The file as its preparer would sign it now. */
export async function preparedFile(actor: Actor, full: EventInFull, officerId: string): Promise<{ readonly ok: true; readonly paper: Paper; readonly seen: string } | { readonly ok: false; readonly why: string }> {
  const signers = await bothSigners(actor, { preparedById: full.event.preparedById, officerId });
  if (!signers.ok) return { ok: false, why: signers.faults.map(({ message }) => message).join('. ') };
  const paper = await previewOf(full, signers, 'event');
  return { ok: true, paper, seen: fingerprintOfPaper(paper) };
}

/** The file that waits for the officer, with what it says; null when none does. */
export async function waitingFile(actor: Actor, eventId: string): Promise<{ readonly id: string; readonly number: string; readonly paper: Paper } | null> {
  const [waiting, data] = await Promise.all([waitingPaperOf(database(), schoolScope(actor), { kind: 'event', eventId }), dataOf(database(), schoolScope(actor), { kind: 'event', eventId })]);
  return waiting === null || data === null ? null : { id: waiting.id, number: waiting.number, paper: unpackPaper(data) };
}

/** Makes a paper that nobody signs, or leads to the one that says the same already. */
export async function makeUnsigned(actor: Actor, { eventId, kind }: { readonly eventId: string; readonly kind: Exclude<EventPaperKind, 'event'> }): Promise<Outcome> {
  const now = new Date();
  const [full, scope] = [await eventInFull(actor, eventId, now), schoolScope(actor)];
  if (full === null) return refused(null, 'This event is not there');
  const number = newDocumentNumber();
  const facts = await eventFactsFor(full, await anySigners(actor, full), number);
  const then = `/events/${eventId}/papers/${kind}/file` as const;
  if ((await keptPaperOf(database(), scope, { kind, eventId }, facts.fingerprint)) !== null) return { ok: true, then };
  const paper = EVENT_PAPERS[kind].make(facts);
  const title = `${EVENT_PAPERS[kind].title}: ${full.event.title}`;
  const { school } = full;
  return { ok: true, then: beginPaper(actor, {
    key: `${kind} ${eventId} ${facts.fingerprint}`, title, back: `/events/${eventId}`, paper,
    keep: async (made) => {
      const document = { id: randomUUID(), number, kind, title, format: school.paper, language: school.locale, fingerprint: facts.fingerprint, of: { eventId }, bytes: [made] as const, data: packPaper(paper) };
      await recordChange(database(), actor, now, async (tx) => ({ value: null, events: await keepDocument(tx, scope, now, document, null, 'made') }));
      return { ok: true, then };
    },
  }) };
}

/** Whoever signs or is to sign; on papers that nobody signs they only stand as contacts. */
async function anySigners(actor: Actor, { event }: EventInFull): Promise<EventSigners> {
  const scope = schoolScope(actor);
  const nobody = { name: 'not named yet', post: 'Safety officer', telephone: '', employer: '' };
  const [preparer, officer] = await Promise.all([signerDetails(database(), scope, event.preparedById), event.officerId === null ? null : signerDetails(database(), scope, event.officerId)]);
  return { preparer: preparer ?? { ...nobody, name: event.preparedByName, post: '' }, officer: officer ?? nobody };
}
