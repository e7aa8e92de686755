import { randomUUID } from 'node:crypto';
import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import type { VenueDetails } from '@/lib/events/details';
import type { EventRecord } from '@/lib/events/event';
import { whyEnded } from '@/lib/events/links';
import type { Fault } from '@/lib/forms/form-state';
import { addArea, changeArea, changeSite } from '@/lib/places/decide-place';
import type { AreaDetails, Site, SiteDetails } from '@/lib/places/place';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { findArea, findSite } from '../places/read-sites';
import { areaColumns, siteColumns } from '../places/rows';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';
import { refusedEvent, writeColumns } from './change-event';
import { type EventLink, findEventLink } from './links';
import { findEvent } from './read-events';
import { detailsAttempt } from './write-event';

export type Described = { readonly ok: true } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Who describes a venue: the seal of the link they hold, and the name they give. */
export interface ByLink { readonly tokenSeal: string; readonly schoolId: string; readonly name: string }

interface Opened { readonly tx: Tx; readonly scope: SchoolScope; readonly at: Date; readonly link: EventLink; readonly event: EventRecord; readonly site: Site }

/** What is said of the venue itself and of the day there. Of two who write at once the second is told. */
export interface VenueDescription {
  readonly revision: number;
  readonly siteRevision: number;
  readonly site: Pick<SiteDetails, 'emergencyNumber' | 'meetingPlace' | 'secondMeetingPlace' | 'keyHolder' | 'keyHolderPhone'>;
  readonly details: Partial<VenueDetails>;
}

export function describeVenue(db: Db, by: ByLink, at: Date, { revision, siteRevision, site: said, details }: VenueDescription): Promise<Described> {
  return throughLink(db, by, at, async ({ tx, scope, event, site }) => {
    if (event.revision !== revision) return refusedEvent('Somebody at the school changed this while you were writing. Open your link again, and look at it');
    const decided = changeSite(site, { ...siteColumns(site), ...said }, siteRevision, []);
    if (!decided.ok) return decided;
    const { count } = await tx.site.updateMany({ where: { ...scope, id: site.id, revision: siteRevision }, data: { ...siteColumns(decided.change), revision: { increment: 1 } } });
    if (count !== 1) throw new MetAnother('The site was changed at the same moment');
    const attempt = detailsAttempt(event, details);
    await writeColumns(tx, scope, event, attempt.data);
    return { ok: true, events: [...decided.events, ...attempt.events] };
  });
}

/** An area of the venue: one there already, or a new one. */
export interface AreaDescription { readonly areaId: string | null; readonly revision: number; readonly area: AreaDetails }

export function describeArea(db: Db, by: ByLink, at: Date, { areaId, revision, area: said }: AreaDescription): Promise<Described> {
  return throughLink(db, by, at, async ({ tx, scope, site }) => {
    const area = areaId === null ? null : await findArea(tx, scope, areaId);
    if (areaId !== null && area?.siteId !== site.id) return refusedEvent('This part of the venue is not there any more');
    const id = area?.id ?? randomUUID();
    const names = site.areas.filter((one) => one.id !== id).map(({ name }) => name);
    const decided = area === null ? addArea(id, site.id, said, names) : changeArea(area, said, revision, names);
    if (!decided.ok) return decided;
    if (area === null) await tx.area.create({ data: { ...scope, ...areaColumns(decided.change), id, siteId: site.id, createdAt: at } });
    else {
      const { count } = await tx.area.updateMany({ where: { ...scope, id, revision }, data: { ...areaColumns(decided.change), revision: { increment: 1 } } });
      if (count !== 1) throw new MetAnother('The area was changed at the same moment');
    }
    return { ok: true, events: decided.events };
  });
}

/** Judges the link again in the transaction that writes, and keeps who answered by it. Only an away venue can be described so. */
async function throughLink(db: Db, { tokenSeal, schoolId, name }: ByLink, at: Date, write: (opened: Opened) => Promise<{ readonly ok: true; readonly events: readonly AuditEvent[] } | { readonly ok: false; readonly faults: readonly Fault[] }>): Promise<Described> {
  const author: AuditAuthor = { schoolId, personId: null, name: `${name} (by link)` };
  const scope = schoolScope({ schoolId });
  return recordChange<Described>(db, author, at, async (tx) => {
    const link = await findEventLink(tx, tokenSeal);
    const why = whyEnded(link, 'describe-venue', at);
    if (why !== null || link === null) return { value: refusedEvent(why ?? ''), events: [] };
    const event = await findEvent(tx, scope, link.eventId);
    const site = event === null ? null : await findSite(tx, scope, event.siteId);
    if (event === null || site?.kind !== 'away') return { value: refusedEvent('This event is not at your venue any more. Tell the person who sent you the link.'), events: [] };
    const written = await write({ tx, scope, at, link, event, site });
    if (!written.ok) return { value: written, events: [] };
    await tx.shareLink.updateMany({ where: { ...scope, id: link.id }, data: { answeredAt: at, answeredByName: name } });
    return { value: { ok: true }, events: [...written.events, { kind: 'link.answered', subjectId: link.id, data: {} }] };
  });
}
