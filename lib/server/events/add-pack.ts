import 'server-only';
import type { z } from 'zod';
import { addEventPack } from '@/lib/db/events/add-pack';
import type { AddPackSchema } from '@/lib/events/packs-input';
import type { Actor } from '../actor';
import { database } from '../database';
import type { Outcome } from '../forms/outcome';
import { packLimitsOf } from '../packs/pack-limits';
import { addable } from './choosable-packs';

/** What a page that stays open has to know: the revision that the event has since. */
export interface PackAdded { readonly revision: number }

/** Adds one pack to an event by its label, and says how many there are. */
export async function addPack(actor: Actor, input: z.output<typeof AddPackSchema>): Promise<Outcome<PackAdded>> {
  const limits = await packLimitsOf(actor);
  const added = await addEventPack(database(), actor, new Date(), input, (listed) => addable(limits, listed));
  return added.ok ? { ok: true, done: added.said ?? '', data: { revision: added.revision } } : added;
}
