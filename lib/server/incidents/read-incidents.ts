import 'server-only';
import { can } from '@/lib/access/can';
import { findPhoto } from '@/lib/db/incidents/photos';
import { placeNames } from '@/lib/db/incidents/place-names';
import { findIncident as readIncident, listIncidents } from '@/lib/db/incidents/read-incidents';
import { schoolScope } from '@/lib/db/scope';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { type IncidentQuery, type ListedIncident, searchIncidents } from '@/lib/incidents/incident-list';
import type { FactNames } from '@/lib/incidents/say-fact';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';

/** How the actor's school calls its places and writes its dates. */
export async function factNames(actor: Actor): Promise<FactNames> {
  const { locale, timeZone } = await currentSchool(actor);
  return { dates: { locale, timeZone }, places: await placeNames(database(), schoolScope(actor)) };
}

/** Returns the incidents the actor may read that a query asks for, and how many there are without it. */
export async function listOfIncidents(actor: Actor, query: IncidentQuery): Promise<{ readonly shown: readonly ListedIncident[]; readonly all: number; readonly open: number }> {
  const all = await listIncidents(database(), schoolScope(actor), mayReadAll(actor) ? null : actor.personId);
  return { shown: searchIncidents(all, query, await factNames(actor)), all: all.length, open: all.filter(({ state }) => state !== 'closed').length };
}

/** Returns an incident the actor may read, or null. */
export async function findIncident(actor: Actor, id: string): Promise<IncidentRecord | null> {
  const incident = await readIncident(database(), schoolScope(actor), id);
  return incident !== null && mayRead(actor, incident.byId) ? incident : null;
}

/** Returns a photo of an incident the actor may read, or null. */
export async function readPhoto(actor: Actor, incidentId: string, photoId: string): Promise<{ readonly mimeType: string; readonly bytes: Uint8Array<ArrayBuffer> } | null> {
  const photo = await findPhoto(database(), schoolScope(actor), incidentId, photoId);
  return photo !== null && mayRead(actor, photo.byId) ? photo : null;
}

/** Returns whether the actor may say something of an incident anew. */
export function mayCorrect(actor: Actor, { byId }: Pick<IncidentRecord, 'byId'>): boolean {
  return can(actor.role, 'incident.correct', { actor, on: { schoolId: actor.schoolId, byId } });
}

function mayRead(actor: Actor, byId: string): boolean {
  return can(actor.role, 'incident.read', { actor, on: { schoolId: actor.schoolId, byId } });
}

/** Whoever may read what somebody else recorded may read all. */
function mayReadAll(actor: Actor): boolean {
  return mayRead(actor, `not ${actor.personId}`);
}
