import 'server-only';
import { contentByVersion, currentContent } from '@/lib/content/editions';
import { listEventLinks } from '@/lib/db/events/links';
import { findEvent, type SiteAssessment, siteAssessments } from '@/lib/db/events/read-events';
import { listPacks } from '@/lib/db/packs/read-packs';
import { findSite } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import { checkEvent, judgedLines } from '@/lib/events/check/check-event';
import { database } from '../database';
import { packLimitsOf } from '../packs/pack-limits';
import { currentSchool } from '../people/current-school';
import { keptResult } from '../signing/kept-result';
import type { Actor } from '../actor';
import { checkFacts } from './check-facts';
import type { EventInFull, Rests } from './event-in-full';

const BY_LABEL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** An event of the actor's school with its check as it stands now, or null. */
export async function eventInFull(actor: Actor, eventId: string, now = new Date()): Promise<EventInFull | null> {
  const scope = schoolScope(actor);
  const event = await findEvent(database(), scope, eventId);
  if (event === null) return null;
  const [school, limits, site, register, versions, links] = await Promise.all([currentSchool(actor), packLimitsOf(actor), findSite(database(), scope, event.siteId), listPacks(database(), scope), siteAssessments(database(), scope, event.siteId), listEventLinks(database(), scope, eventId)]);
  if (site === null) throw new Error(`the place of event ${eventId} is gone`);
  const chosen = new Set(event.packIds);
  const packs = register.filter(({ pack }) => chosen.has(pack.id)).sort((one, other) => BY_LABEL.compare(one.pack.label, other.pack.label));
  const rests = await restsOn(actor, versions);
  const onItsWay = versions.find(({ state }) => state !== 'signed') ?? null;
  const content = contentByVersion(event.contentVersion) ?? currentContent;
  const material = { event, content, school, site, packs, limits, rests, onItsWay, links, now };
  return { ...material, lines: judgedLines(checkEvent(checkFacts(material)), event.acceptances) };
}

/** The latest signed assessment of a site; of several, one that is suspended first: nobody leaves past a suspension. */
async function restsOn(actor: Actor, versions: readonly SiteAssessment[]): Promise<Rests | null> {
  const signed = versions.filter(({ state, signedAt }) => state === 'signed' && signedAt !== null);
  const version = signed.find(({ suspensions }) => suspensions.length > 0) ?? signed[0];
  return version === undefined ? null : { version, scored: await keptResult(actor, version.id) };
}
