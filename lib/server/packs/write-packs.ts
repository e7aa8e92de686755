import 'server-only';
import { addPacks as writePacks, type Added } from '@/lib/db/packs/add-packs';
import { changePackDetails } from '@/lib/db/packs/change-pack';
import { changePackState, placeIsolatedPack } from '@/lib/db/packs/move-pack';
import { addPacks } from '@/lib/packs/change-pack';
import { copyPack } from '@/lib/packs/copy-pack';
import type { PackInput } from '@/lib/packs/pack-input';
import type { MovePack } from '@/lib/packs/states/move-pack';
import type { SayWhere } from '@/lib/packs/states/say-where';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { packLimitsOf } from './pack-limits';
import { findPack } from './read-packs';

/** Enters a pack, or the packs of a table, all or none. */
export async function enterPacks(actor: Actor, inputs: readonly PackInput[], how: 'form' | 'import'): Promise<Added> {
  const today = await todayOf(actor);
  return writePacks(database(), actor, new Date(), await packLimitsOf(actor), how, (taken) => addPacks(inputs, taken, today));
}

/** Enters copies of a pack of the register under labels that go on from its own. */
export async function enterCopies(actor: Actor, { packId, copies }: { readonly packId: string; readonly copies: number }): Promise<Outcome> {
  const history = await findPack(actor, packId);
  if (history === null) return refused(null, 'Your register has no such pack');
  const added = await writePacks(database(), actor, new Date(), await packLimitsOf(actor), 'form', (taken) => copyPack(history.pack, copies, taken));
  return added.ok ? { ok: true, then: '/packs' } : added;
}

/** Changes what the register says of a pack. */
export async function changePack(actor: Actor, { packId, revision, input }: { readonly packId: string; readonly revision: number; readonly input: PackInput }): Promise<Outcome> {
  const written = await changePackDetails(database(), actor, new Date(), packId, { input, revision, today: await todayOf(actor) });
  return written.ok ? { ok: true, then: `/packs/${packId}` } : written;
}

/** Changes the state of a pack by hand. */
export async function movePack(actor: Actor, command: MovePack): Promise<Outcome> {
  const written = await changePackState(database(), actor, new Date(), await packLimitsOf(actor), command);
  return written.ok ? { ok: true, then: `/packs/${command.packId}` } : written;
}

/** Keeps where an isolated pack is now. */
export async function placePack(actor: Actor, command: SayWhere): Promise<Outcome> {
  const written = await placeIsolatedPack(database(), actor, new Date(), await packLimitsOf(actor), command);
  return written.ok ? { ok: true, then: `/packs/${command.packId}` } : written;
}

async function todayOf(actor: Actor): Promise<string> {
  return calendarDay(new Date(), (await currentSchool(actor)).timeZone);
}
