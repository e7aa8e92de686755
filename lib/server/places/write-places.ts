import 'server-only';
import { archivePlace, type PlaceRef } from '@/lib/db/places/archive-place';
import { bringBackPlace } from '@/lib/db/places/bring-back-place';
import { createArea, createSite, type PlaceWritten, updateArea, updateSite } from '@/lib/db/places/write-sites';
import type { AreaDetails, SiteDetails } from '@/lib/places/place';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

export async function addSite(actor: Actor, input: SiteDetails): Promise<Outcome> {
  return toPlace(await createSite(database(), actor, new Date(), input), (id) => `/places/${id}`);
}

export async function changeSite(actor: Actor, siteId: string, input: SiteDetails, revision: number): Promise<Outcome> {
  return toPlace(await updateSite(database(), actor, new Date(), siteId, input, revision), (id) => `/places/${id}`);
}

export async function addArea(actor: Actor, siteId: string, input: AreaDetails): Promise<Outcome> {
  return toPlace(await createArea(database(), actor, new Date(), siteId, input), () => `/places/${siteId}`);
}

export async function changeArea(actor: Actor, area: { readonly siteId: string; readonly areaId: string }, input: AreaDetails, revision: number): Promise<Outcome> {
  return toPlace(await updateArea(database(), actor, new Date(), area.areaId, input, revision), () => `/places/${area.siteId}`);
}

/** Puts a site or an area away. What names it goes on naming it. */
export async function putAway(actor: Actor, place: PlaceRef, then: `/places${string}`): Promise<Outcome> {
  return (await archivePlace(database(), actor, new Date(), place)) ? { ok: true, then } : refused(null, 'This was put away already');
}

/** Offers again what was put away. */
export async function bringBack(actor: Actor, place: PlaceRef): Promise<Outcome> {
  return (await bringBackPlace(database(), actor, new Date(), place)) ? { ok: true, done: 'It is offered again.' } : refused(null, 'This is in use already');
}

function toPlace(written: PlaceWritten, address: (id: string) => `/places/${string}`): Outcome {
  return written.ok ? { ok: true, then: address(written.id) } : written;
}
