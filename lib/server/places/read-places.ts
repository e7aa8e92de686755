import 'server-only';
import { findArea as readArea, findSite as readSite, listSites } from '@/lib/db/places/read-sites';
import { areasPutAway, type PutAwayPlace, sitesPutAway } from '@/lib/db/places/put-away';
import { schoolScope } from '@/lib/db/scope';
import type { Area, Site } from '@/lib/places/place';
import type { Actor } from '../actor';
import { database } from '../database';

/** Returns the sites of the actor's school whose name or address holds a text, by name. */
export async function listOfSites(actor: Actor, find: string): Promise<readonly Site[]> {
  const wanted = find.trim().toLowerCase();
  const sites = await listSites(database(), schoolScope(actor));
  return sites.filter(({ name, address }) => `${name} ${address}`.toLowerCase().includes(wanted));
}

/** Returns a site of the actor's school with its areas, or null when there is none. */
export function findSite(actor: Actor, siteId: string): Promise<Site | null> {
  return readSite(database(), schoolScope(actor), siteId);
}

/** Returns an area of the actor's school, or null when there is none. */
export function findArea(actor: Actor, areaId: string): Promise<Area | null> {
  return readArea(database(), schoolScope(actor), areaId);
}

/** Returns what was put away: the sites of the actor's school, or the areas of one of them. */
export function placesPutAway(actor: Actor, siteId: string | null): Promise<readonly PutAwayPlace[]> {
  return siteId === null ? sitesPutAway(database(), schoolScope(actor)) : areasPutAway(database(), schoolScope(actor), siteId);
}
