import 'server-only';
import { listPacks, packHistory } from '@/lib/db/packs/read-packs';
import { schoolScope } from '@/lib/db/scope';
import type { PackHistory } from '@/lib/packs/pack-history';
import { filteredPacks, type ListedPack, type PackFilter } from '@/lib/packs/pack-list';
import type { PackState } from '@/lib/packs/states/pack-states';
import type { Actor } from '../actor';
import { database } from '../database';
import { packLimitsOf } from './pack-limits';

export interface PackList {
  /** what the filter shows, what presses first */
  readonly shown: readonly ListedPack[];
  /** of the whole register */
  readonly counts: Readonly<Record<PackState | 'here' | 'all', number>>;
}

/** Returns the packs of the actor's school that a filter shows, and how many there are of each state. */
export async function listOfPacks(actor: Actor, filter: PackFilter, now: Date): Promise<PackList> {
  const [packs, limits] = await Promise.all([listPacks(database(), schoolScope(actor)), packLimitsOf(actor)]);
  const count = (state: PackState): number => packs.filter(({ pack }) => pack.state === state).length;
  const counts = { 'in-use': count('in-use'), watch: count('watch'), isolated: count('isolated'), retired: count('retired'), 'handed-over': count('handed-over') };
  return { shown: filteredPacks(limits, packs, filter, now), counts: { ...counts, all: packs.length, here: packs.length - counts['handed-over'] } };
}

/** Returns a pack of the actor's school with all that was seen of it and done with it, or null when there is none. */
export function findPack(actor: Actor, packId: string): Promise<PackHistory | null> {
  return packHistory(database(), schoolScope(actor), packId);
}
