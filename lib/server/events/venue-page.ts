import 'server-only';
import { z } from 'zod';
import { contentByVersion, currentContent } from '@/lib/content/editions';
import { countOpened, type EventLink, findEventLink } from '@/lib/db/events/links';
import { findEvent } from '@/lib/db/events/read-events';
import { describeArea, describeVenue } from '@/lib/db/events/venue-by-link';
import { findSite } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { venueControls } from '@/lib/events/details';
import type { EventRecord } from '@/lib/events/event';
import { whyEnded } from '@/lib/events/links';
import { DescribeAreaTargetSchema, type DescribeVenueInput } from '@/lib/events/venue-input';
import { AreaInputSchema } from '@/lib/places/area-input';
import type { Site } from '@/lib/places/place';
import { momentWords } from '@/lib/wording/dates';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { type CurrentSchool, currentSchool } from '../people/current-school';
import { linkToken, sealOfToken } from './link-token';
import { whenWords } from './when-words';

export interface VenuePage {
  readonly link: EventLink;
  readonly event: EventRecord;
  readonly site: Site;
  readonly school: CurrentSchool;
  readonly when: string;
  readonly until: string;
  /** what is asked of the venue, by the titles of the content */
  readonly asked: readonly { readonly id: string; readonly title: string; readonly hint: string }[];
}
type Opened = { readonly ok: true; readonly page: VenuePage } | { readonly ok: false; readonly reason: string };

/** What a venue's link leads to, or why it does not work. */
export async function openVenueLink(token: string): Promise<Opened> {
  const link = await findEventLink(database(), sealOfToken(token));
  const why = whyEnded(link, 'describe-venue', new Date());
  if (why !== null || link === null) return { ok: false, reason: why ?? '' };
  const scope = schoolScope(link);
  const [event, school] = await Promise.all([findEvent(database(), scope, link.eventId), currentSchool(link)]);
  const site = event === null ? null : await findSite(database(), scope, event.siteId);
  if (event === null || site?.kind !== 'away') return { ok: false, reason: 'This event is not at your venue any more. Tell the person who sent you the link.' };
  return { ok: true, page: { link, event, site, school, when: whenWords(event, school), until: momentWords(link.expiresAt, school), asked: askedOf(event) } };
}

/** What is asked of a venue: more, where packs are charged there. */
export function askedOf({ contentVersion, details }: Pick<EventRecord, 'contentVersion' | 'details'>): VenuePage['asked'] {
  const { controls } = contentByVersion(contentVersion) ?? currentContent;
  return venueControls(details).flatMap((id) => controls.filter((control) => control.id === id).map(({ title, goodLooksLike }) => ({ id, title, hint: goodLooksLike })));
}

export async function countVenueOpened({ link }: VenuePage): Promise<void> {
  await countOpened(database(), link, new Date());
}

/** Keeps what the venue's own staff said of the venue and the day. */
export async function describe({ token, name, revision, siteRevision, emergencyNumber, meetingPlace, secondMeetingPlace, keyHolder, keyHolderPhone, ...details }: DescribeVenueInput): Promise<Outcome> {
  const opened = await openVenueLink(token);
  if (!opened.ok) return refused(null, opened.reason);
  const { link, asked } = { link: opened.page.link, asked: opened.page.asked.map(({ id }) => id) };
  const agreed = details.agreed.filter((id) => asked.includes(id));
  const done = await describeVenue(database(), { tokenSeal: sealOfToken(linkToken(link.id)), schoolId: link.schoolId, name }, new Date(), { revision, siteRevision, site: { emergencyNumber, meetingPlace, secondMeetingPlace, keyHolder, keyHolderPhone }, details: { ...details, agreed } });
  return done.ok ? { ok: true, done: 'Saved. Thank you. You can change it here until the link ends.' } : done;
}

export const DescribeAreaSchema = z.intersection(DescribeAreaTargetSchema.transform((target) => ({ target })), AreaInputSchema.transform((area) => ({ area })));

/** Keeps what they said of a part of the venue. */
export async function describePart({ target: { token, byName, areaId, revision }, area }: z.output<typeof DescribeAreaSchema>): Promise<Outcome> {
  const opened = await openVenueLink(token);
  if (!opened.ok) return refused(null, opened.reason);
  const { link } = opened.page;
  const done = await describeArea(database(), { tokenSeal: sealOfToken(linkToken(link.id)), schoolId: link.schoolId, name: byName }, new Date(), { areaId, revision, area });
  return done.ok ? { ok: true, then: `/venue/${encodeURIComponent(token)}` } : done;
}
