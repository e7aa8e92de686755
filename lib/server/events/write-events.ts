import 'server-only';
import type { z } from 'zod';
import { currentContent } from '@/lib/content/editions';
import { listPacks } from '@/lib/db/packs/read-packs';
import type { EventChanged } from '@/lib/db/events/change-event';
import { cancelEvent, reopenEvent, withdrawEvent } from '@/lib/db/events/end-event';
import { acceptLineOf, returnEvent } from '@/lib/db/events/sign-event';
import { beginEvent, changeAdults, changeBasics, changeDetails, changePacks, copyEvent } from '@/lib/db/events/write-event';
import { schoolScope } from '@/lib/db/scope';
import { openLines } from '@/lib/events/check/check-event';
import { type ChangeAdultsSchema, readAdults } from '@/lib/events/adults-input';
import type { ChangeTravelSchema, ChangeVenueSchema } from '@/lib/events/details-input';
import { type BeginEventSchema, type ChangeBasicsSchema, readBasics } from '@/lib/events/event-input';
import { type ChangePacksSchema, choosePacks } from '@/lib/events/packs-input';
import type { AcceptLineSchema } from '@/lib/events/signing-input';
import { labelKey } from '@/lib/packs/pack';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { packLimitsOf } from '../packs/pack-limits';
import { currentSchool } from '../people/current-school';
import { choosable } from './choosable-packs';
import { eventInFull } from './gather';

export async function begin(actor: Actor, input: z.output<typeof BeginEventSchema>): Promise<Outcome> {
  const basics = readBasics(input, (await currentSchool(actor)).timeZone);
  return basics.ok ? toEvent(await beginEvent(database(), actor, new Date(), basics.value, currentContent.version)) : basics;
}

export async function copy(actor: Actor, eventId: string): Promise<Outcome> {
  const copied = await copyEvent(database(), actor, new Date(), eventId, currentContent.version);
  return copied.ok ? { ok: true, then: `/events/${copied.id}/edit` } : copied;
}

export async function saveBasics(actor: Actor, { eventId, revision, ...input }: z.output<typeof ChangeBasicsSchema>): Promise<Outcome> {
  const basics = readBasics(input, (await currentSchool(actor)).timeZone);
  return basics.ok ? toEvent(await changeBasics(database(), actor, new Date(), { eventId, revision }, basics.value)) : basics;
}

export async function saveAdults(actor: Actor, { eventId, revision, ...raw }: z.output<typeof ChangeAdultsSchema>): Promise<Outcome> {
  const adults = readAdults(raw);
  return adults.ok ? toEvent(await changeAdults(database(), actor, new Date(), { eventId, revision }, adults.value)) : adults;
}

export async function saveDetails(actor: Actor, { eventId, revision, ...details }: z.output<typeof ChangeVenueSchema> | z.output<typeof ChangeTravelSchema>): Promise<Outcome> {
  return toEvent(await changeDetails(database(), actor, new Date(), { eventId, revision }, details));
}

export async function savePacks(actor: Actor, { eventId, revision, ...input }: z.output<typeof ChangePacksSchema>): Promise<Outcome> {
  const limits = await packLimitsOf(actor);
  return toEvent(await changePacks(database(), actor, new Date(), { eventId, revision }, async (event, tx) => {
    const register = await listPacks(tx, schoolScope(actor));
    return choosePacks(event.packIds, input, register.map((listed) => choosable(limits, listed)), labelKey);
  }));
}

/** Returns what lies with the officer to its preparer. */
export async function sendBack(actor: Actor, { eventId, reason }: { readonly eventId: string; readonly reason: string }): Promise<Outcome> {
  return toEvent(await returnEvent(database(), actor, new Date(), eventId, reason));
}

/** Lets a line of the check stand, if it still says what the officer read. */
export async function acceptLine(actor: Actor, { eventId, lineId, words, reason }: z.output<typeof AcceptLineSchema>): Promise<Outcome> {
  const full = await eventInFull(actor, eventId);
  if (full === null) return refused(null, 'This event is not there');
  const line = openLines(full.lines).find((one) => one.id === lineId && one.words === words);
  return toEvent(await acceptLineOf(database(), actor, new Date(), eventId, { lineId, words, reason, line: line === undefined ? null : { mayBeAccepted: line.mayBeAccepted, open: true } }));
}

export async function takeFileBack(actor: Actor, { eventId, reason }: { readonly eventId: string; readonly reason: string }): Promise<Outcome> {
  return toEvent(await withdrawEvent(database(), actor, new Date(), eventId, reason));
}

/** Opens a signed event again; its file stays in force until another is handed over. */
export async function openAgain(actor: Actor, eventId: string): Promise<Outcome> {
  return toEvent(await reopenEvent(database(), actor, new Date(), eventId));
}

export async function callOff(actor: Actor, { eventId, reason }: { readonly eventId: string; readonly reason: string }): Promise<Outcome> {
  return toEvent(await cancelEvent(database(), actor, new Date(), eventId, reason));
}

function toEvent(changed: EventChanged): Outcome {
  return changed.ok ? { ok: true, then: `/events/${changed.id}` } : changed;
}
