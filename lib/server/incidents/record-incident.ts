import 'server-only';
import { currentContent } from '@/lib/content/editions';
import { dropDraft as takeAway, keepDraft as write } from '@/lib/db/incidents/drafts';
import { recordIncident as record } from '@/lib/db/incidents/record-incident';
import { writeDraft } from '@/lib/incidents/draft';
import { MOST_PHOTOS_AT_ONCE } from '@/lib/incidents/photo';
import { readIncident } from '@/lib/incidents/read-incident';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { cleanPhotos, filesOf } from '../photos/clean-photos';

type Raw = Readonly<Record<string, unknown>>;

/** What the form of a new incident asks for: to be recorded, or kept for later. */
export function saveForm(actor: Actor, raw: Raw): Promise<Outcome> {
  return raw.intent === 'draft' ? keepDraft(actor, raw) : recordIncident(actor, raw);
}

/**
 * Records an incident, with its photos. A photo that cannot be read does not stand in the way of the record: the page
 * of the incident says so.
 */
async function recordIncident(actor: Actor, raw: Raw): Promise<Outcome> {
  const { timeZone } = await currentSchool(actor);
  const read = readIncident(raw, { timeZone, now: new Date() });
  if (!read.ok) return read;
  const files = filesOf(raw.photos);
  if (files.length > MOST_PHOTOS_AT_ONCE) return refused('photos', `Choose at most ${MOST_PHOTOS_AT_ONCE} photos; more can be added afterwards`);
  const photos = await cleanPhotos(files);
  const recorded = await record(database(), actor, new Date(), { ...read.incident, photos: photos.kept, contentVersion: currentContent.version });
  if (!recorded.ok) return recorded;
  return { ok: true, then: `/incidents/${recorded.id}?saved=${photos.refused.length === 0 ? 'whole' : 'without-photo'}` };
}

async function keepDraft(actor: Actor, raw: Raw): Promise<Outcome> {
  await write(database(), actor, new Date(), writeDraft(raw));
  return { ok: true, done: 'Kept as a draft, without photos. Nobody else sees it, and no pack is marked isolated yet.' };
}

export async function dropDraft(actor: Actor): Promise<Outcome> {
  await takeAway(database(), actor);
  return { ok: true, then: `/incidents/new?empty=${Date.now()}` };
}
