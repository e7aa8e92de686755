import 'server-only';
import type { z } from 'zod';
import { currentContent } from '@/lib/content/editions';
import type { IncidentChanged } from '@/lib/db/incidents/change-incident';
import { addPersons, correctFact } from '@/lib/db/incidents/correct';
import { rightPackOfIncident } from '@/lib/db/incidents/right-wrong-pack';
import { addPhotos as keepPhotos, removePhoto as takePhoto } from '@/lib/db/incidents/photos';
import { addCorrectiveAction as addAction, close, followUp, reopen } from '@/lib/db/incidents/review';
import type { AddPhotosSchema, CloseSchema, CorrectionSchema, CorrectiveActionSchema, FollowUpSchema, RemovePhotoSchema, ReopenSchema, RiskSchema } from '@/lib/incidents/change-input';
import { isFactName } from '@/lib/incidents/facts';
import { MOST_PHOTOS_AT_ONCE } from '@/lib/incidents/photo';
import { readFact } from '@/lib/incidents/read-facts';
import type { WrongPack } from '@/lib/incidents/wrong-pack';
import { readPersons } from '@/lib/incidents/read-persons';
import type { SayWhere } from '@/lib/packs/states/say-where';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { placePack } from '../packs/write-packs';
import { currentSchool } from '../people/current-school';
import { cleanPhotos, filesOf } from '../photos/clean-photos';

/** Says a fact anew, or adds people who were affected. What was recorded first stays. */
export async function correct(actor: Actor, raw: z.output<typeof CorrectionSchema>): Promise<Outcome> {
  const { incidentId, field, reason } = raw;
  const page = { ok: true, then: `/incidents/${incidentId}` } as const;
  if (field === 'persons') {
    const persons = readPersons(raw);
    if (!persons.ok) return persons;
    const added = await addPersons(database(), actor, new Date(), { incidentId, persons: persons.value, reason });
    return added.ok ? page : added;
  }
  if (!isFactName(field)) return refused(null, 'There is no such field');
  const { timeZone } = await currentSchool(actor);
  const after = readFact(field, raw, { timeZone, now: new Date() });
  if (!after.ok) return after;
  const corrected = await correctFact(database(), actor, new Date(), { incidentId, field, after: after.value, reason });
  return corrected.ok ? page : corrected;
}

/** Another pack was meant: says so, and takes the one named out of isolation. */
export async function rightPack(actor: Actor, input: WrongPack): Promise<Outcome> {
  const righted = await rightPackOfIncident(database(), actor, new Date(), input);
  return righted.ok ? { ok: true, then: `/packs/${input.packId}` } : righted;
}

export async function addFollowUp(actor: Actor, { incidentId, kind, text }: z.output<typeof FollowUpSchema>): Promise<Outcome> {
  return said(await followUp(database(), actor, new Date(), incidentId, { kind, text }), 'Added.');
}

/** Says which risk of the assessment it counts for. */
export async function chooseRisk(actor: Actor, { incidentId, risk }: z.output<typeof RiskSchema>): Promise<Outcome> {
  if (risk !== 'none' && !currentContent.scenarios.some(({ id }) => id === risk)) return refused('risk', 'Choose the risk, or “None of them”');
  return said(await followUp(database(), actor, new Date(), incidentId, { kind: 'risk', text: risk }), 'Kept.');
}

export async function addCorrectiveAction(actor: Actor, input: z.output<typeof CorrectiveActionSchema>): Promise<Outcome> {
  return said(await addAction(database(), actor, new Date(), input), 'Added.');
}

export async function closeIncident(actor: Actor, input: z.output<typeof CloseSchema>): Promise<Outcome> {
  return said(await close(database(), actor, new Date(), input), 'Closed.');
}

export async function reopenIncident(actor: Actor, input: z.output<typeof ReopenSchema>): Promise<Outcome> {
  return said(await reopen(database(), actor, new Date(), input), 'Open again.');
}

/** Keeps where a pack of an incident is now, and stays at the incident. */
export async function placeIncidentPack(actor: Actor, command: SayWhere): Promise<Outcome> {
  const placed = await placePack(actor, command);
  return placed.ok ? { ok: true, done: 'Kept where it is.' } : placed;
}

export async function addPhotos(actor: Actor, raw: z.output<typeof AddPhotosSchema>): Promise<Outcome> {
  const files = filesOf(raw.photos);
  if (files.length === 0) return refused('photos', 'Choose a photo');
  if (files.length > MOST_PHOTOS_AT_ONCE) return refused('photos', `Choose at most ${MOST_PHOTOS_AT_ONCE} photos at a time`);
  const photos = await cleanPhotos(files);
  if (photos.refused.length > 0) return refused('photos', `Nothing was kept, because of ${photos.refused.join('; ')}`);
  return said(await keepPhotos(database(), actor, new Date(), raw.incidentId, photos.kept), 'Added.');
}

export async function removePhoto(actor: Actor, input: z.output<typeof RemovePhotoSchema>): Promise<Outcome> {
  return said(await takePhoto(database(), actor, new Date(), input), 'Taken away, for good.');
}

function said(changed: IncidentChanged, done: string): Outcome {
  return changed.ok ? { ok: true, done } : changed;
}
