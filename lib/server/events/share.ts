import 'server-only';
import { can } from '@/lib/access/can';
import { type EventLink, listEventLinks, revokeEventLink, shareEvent } from '@/lib/db/events/links';
import { schoolScope } from '@/lib/db/scope';
import { type LinkPurpose, type ShareInput, whyEnded } from '@/lib/events/links';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { publicAddress } from '../people/public-address';
import { linkToken, sealOfToken } from './link-token';

/** A link as its event's page shows it. */
export interface SharedLink {
  readonly id: string;
  readonly purpose: LinkPurpose;
  readonly forWhom: string;
  readonly byName: string;
  readonly until: string;
  /** "opened 3 times, last on …" */
  readonly opened: string;
  readonly answered: string | null;
  readonly documentNumber: string | null;
  /** the link itself while it works and the reader may hand it on */
  readonly address: string | null;
  readonly ended: string | null;
  readonly mayTakeBack: boolean;
}

/** Makes a link for somebody without an account. */
export async function share(actor: Actor, input: ShareInput): Promise<Outcome> {
  if (!can(actor.role, 'link.share')) return refused(null, 'Your role does not go so far');
  const shared = await shareEvent(database(), actor, new Date(), input, (id) => sealOfToken(linkToken(id)));
  return shared.ok ? { ok: true, done: `Made. The link for ${input.forWhom} stands under the links below: copy it and pass it on.` } : shared;
}

/** Takes a link back at once. */
export async function takeLinkBack(actor: Actor, input: { readonly eventId: string; readonly linkId: string }): Promise<Outcome> {
  const revoked = await revokeEventLink(database(), actor, new Date(), input, (byId) => can(actor.role, 'link.revoke', { actor, on: { schoolId: actor.schoolId, byId } }));
  return revoked.ok ? { ok: true, done: 'Taken back. The link no longer works.' } : revoked;
}

/** The links of an event, the latest first. */
export async function linksOfEvent(actor: Actor, eventId: string): Promise<readonly SharedLink[]> {
  if (!can(actor.role, 'link.share')) return [];
  const [school, links] = await Promise.all([currentSchool(actor), listEventLinks(database(), schoolScope(actor), eventId)]);
  return Promise.all(links.map((link) => sharedLink(actor, link, (at) => momentWords(at, school))));
}

async function sharedLink(actor: Actor, link: EventLink, words: (at: Date) => string): Promise<SharedLink> {
  const why = whyEnded(link, link.purpose, new Date());
  const { id, purpose, forWhom, byId, byName, documentNumber, openedCount, lastOpenedAt, answeredAt } = link;
  return {
    id, purpose, forWhom, byName, documentNumber, until: words(link.expiresAt),
    opened: lastOpenedAt === null ? 'Not opened yet' : `Opened ${openedCount === 1 ? 'once' : `${openedCount} times`}, last on ${words(lastOpenedAt)}`,
    answered: answeredAt === null ? null : `${link.answeredByName ?? forWhom}, ${words(answeredAt)}`,
    address: why === null ? await publicAddress(`/${purpose === 'see-document' ? 'share' : 'venue'}/${linkToken(id)}`) : null,
    ended: link.revokedAt !== null ? 'taken back' : why === null ? null : 'ended',
    mayTakeBack: link.revokedAt === null && can(actor.role, 'link.revoke', { actor, on: { schoolId: actor.schoolId, byId } }),
  };
}
