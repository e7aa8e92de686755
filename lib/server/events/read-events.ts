import 'server-only';
import { listEvents } from '@/lib/db/events/read-events';
import { listPacks } from '@/lib/db/packs/read-packs';
import { schoolScope } from '@/lib/db/scope';
import { type EventQuery, isOver, type ListedEvent, searchEvents } from '@/lib/events/event-list';
import { filteredPacks, type ListedPack, type PackFilter } from '@/lib/packs/pack-list';
import type { Actor } from '../actor';
import { database } from '../database';
import { packLimitsOf } from '../packs/pack-limits';

/** Returns the events of the actor's school that a query asks for, and how many there are without it. */
export async function listOfEvents(actor: Actor, query: EventQuery, now: Date): Promise<{ readonly shown: readonly ListedEvent[]; readonly all: number; readonly coming: number }> {
  const all = await listEvents(database(), schoolScope(actor));
  return { shown: searchEvents(all, query, now), all: all.length, coming: all.filter((event) => !isOver(event, now) && event.state !== 'cancelled' && event.state !== 'withdrawn').length };
}

/** The packs that an event's list offers: those still here that a filter shows, and those chosen before that are not. */
export async function packsToChoose(actor: Actor, filter: PackFilter, chosen: readonly string[], now: Date): Promise<readonly ListedPack[]> {
  const register = await listPacks(database(), schoolScope(actor));
  const shown = filteredPacks(await packLimitsOf(actor), register, filter, now);
  const also = filter.find === '' && filter.state === null ? register.filter(({ pack }) => chosen.includes(pack.id) && !shown.some((one) => one.pack.id === pack.id)) : [];
  return [...shown, ...also];
}
