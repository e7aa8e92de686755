import type { PackLimits } from '@/lib/content/model';
import type { Pack } from '@/lib/packs/pack';
import { movePack, type MovePack } from '@/lib/packs/states/move-pack';
import type { MoveChange } from '@/lib/packs/states/new-state';
import { sayWhere, type SayWhere } from '@/lib/packs/states/say-where';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { addStateChange, decideOnPack, type Writing, writeState, type Written } from './write-pack';

/** Changes the state of a pack by hand, when it may be changed so. */
export async function changePackState(db: Db, by: Member, at: Date, limits: PackLimits, command: MovePack): Promise<Written> {
  return decideOnPack(db, by, at, command.packId, (history) => movePack(limits, history, command, by.role), writeMove);
}

/** Keeps where an isolated pack is now. The register moves nothing. */
export async function placeIsolatedPack(db: Db, by: Member, at: Date, limits: PackLimits, command: SayWhere): Promise<Written> {
  return decideOnPack(db, by, at, command.packId, (history) => sayWhere(limits, history, command), async (writing, pack, place) => {
    await addStateChange(writing, pack, { to: pack.state, cause: null, ...place });
  });
}

async function writeMove(writing: Writing, pack: Pack, { state, handOver }: MoveChange): Promise<void> {
  await writeState(writing, pack, state);
  if (handOver === null) return;
  const { tx, scope, by, at } = writing;
  const { id: handOverId } = await tx.handOver.create({ data: { ...scope, ...handOver, note: state.reason, byId: by.personId, byName: by.name, at }, select: { id: true } });
  await tx.handOverPack.create({ data: { ...scope, handOverId, packId: pack.id } });
}
