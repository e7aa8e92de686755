import { randomUUID } from 'node:crypto';
import { LINK_PURPOSES, linkEnd, type LinkState, type ShareInput } from '@/lib/events/links';
import { eventStateOf, isOpen } from '@/lib/events/standing';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Prisma } from '../generated/sqlite/client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { type EventChanged, refusedEvent } from './change-event';
import { findEvent } from './read-events';

/** A link to somebody without an account. */
export interface EventLink extends LinkState {
  readonly id: string;
  readonly schoolId: string;
  readonly eventId: string;
  readonly documentId: string | null;
  readonly documentNumber: string | null;
  readonly forWhom: string;
  readonly byId: string;
  readonly byName: string;
  readonly createdAt: Date;
  readonly openedCount: number;
  readonly lastOpenedAt: Date | null;
  readonly answeredAt: Date | null;
  readonly answeredByName: string | null;
}

const WITH = { event: { select: { state: true } }, document: { select: { number: true } }, by: { select: { person: { select: { name: true } } } } } as const satisfies Prisma.ShareLinkInclude;

function linkOfRow({ event, document, by, purpose, eventId, ...row }: Prisma.ShareLinkGetPayload<{ include: typeof WITH }>): EventLink {
  const known = LINK_PURPOSES.find((one) => one === purpose);
  if (known === undefined || eventId === null || event === null) throw new Error(`Link ${row.id} is of no event, or of the unknown purpose ${purpose}`);
  return { ...row, eventId, purpose: known, eventState: eventStateOf(event.state), documentNumber: document?.number ?? null, byName: by.person.name };
}

/** Makes a link's row. Of its secret only the seal is kept. A link to the file shows this very file, whatever comes after it. */
export async function shareEvent(db: Db, by: Member, at: Date, { eventId, purpose, forWhom, days }: ShareInput, sealOfLink: (id: string) => string): Promise<EventChanged> {
  const scope = schoolScope(by);
  const id = randomUUID();
  const expiresAt = linkEnd(at, days);
  return recordChange<EventChanged>(db, by, at, async (tx) => {
    const event = await findEvent(tx, scope, eventId);
    if (event === null) return { value: refusedEvent('Your school has no such event'), events: [] };
    if (purpose === 'describe-venue' && !isOpen(event.state)) return { value: refusedEvent('The venue can only be described while the event is being prepared'), events: [] };
    if (purpose === 'describe-venue' && event.siteKind !== 'away') return { value: refusedEvent('Your own place you describe yourselves, under Places'), events: [] };
    const file = purpose === 'see-document' ? await signedFile(tx, scope, eventId) : null;
    if (purpose === 'see-document' && file === null) return { value: refusedEvent('There is no signed file to share yet'), events: [] };
    await tx.shareLink.create({ data: { ...scope, id, tokenSeal: sealOfLink(id), purpose, eventId, siteId: event.siteId, documentId: file?.id ?? null, forWhom, byId: by.personId, createdAt: at, expiresAt } });
    return { value: { ok: true, id }, events: [{ kind: 'link.shared', subjectId: id, data: { purpose, forWhom, expiresAt: expiresAt.toISOString() } }] };
  });
}

async function signedFile(tx: Tx, scope: SchoolScope, eventId: string): Promise<{ readonly id: string } | null> {
  return tx.document.findFirst({ where: { ...scope, eventId, kind: 'event', state: 'signed', replacedAt: null, withdrawnAt: null }, orderBy: { createdAt: 'desc' }, select: { id: true } });
}

/** Every link of an event, the latest first. */
export async function listEventLinks(db: Db, scope: SchoolScope, eventId: string): Promise<readonly EventLink[]> {
  const rows = await db.shareLink.findMany({ where: { ...scope, eventId }, orderBy: [{ createdAt: 'desc' }, { id: 'asc' }], include: WITH });
  return rows.map(linkOfRow);
}

/** Returns the link by the seal of its secret, or null. Whoever holds it is of no school. */
export async function findEventLink(db: Pick<Tx, 'shareLink'>, tokenSeal: string): Promise<EventLink | null> {
  const row = await db.shareLink.findUnique({ where: { tokenSeal }, include: WITH });
  return row === null || row.eventId === null ? null : linkOfRow(row);
}

/** Counts that a link was opened. */
export async function countOpened(db: Db, { id, schoolId }: Pick<EventLink, 'id' | 'schoolId'>, at: Date): Promise<void> {
  await db.shareLink.updateMany({ where: { ...schoolScope({ schoolId }), id }, data: { openedCount: { increment: 1 }, lastOpenedAt: at } });
}

/** Takes a link back. @param may whether this person may, by who made it */
export async function revokeEventLink(db: Db, by: Member, at: Date, { eventId, linkId }: { readonly eventId: string; readonly linkId: string }, may: (madeById: string) => boolean): Promise<EventChanged> {
  const scope = schoolScope(by);
  return recordChange<EventChanged>(db, by, at, async (tx) => {
    const link = await tx.shareLink.findFirst({ where: { ...scope, id: linkId, eventId }, select: { byId: true } });
    if (link === null) return { value: refusedEvent('This link is not there'), events: [] };
    if (!may(link.byId)) return { value: refusedEvent('Somebody else made this link, and takes it back'), events: [] };
    const { count } = await tx.shareLink.updateMany({ where: { ...scope, id: linkId, revokedAt: null }, data: { revokedAt: at, revokedById: by.personId } });
    if (count !== 1) return { value: refusedEvent('This link was taken back already'), events: [] };
    return { value: { ok: true, id: linkId }, events: [{ kind: 'link.revoked', subjectId: linkId, data: {} }] };
  });
}

