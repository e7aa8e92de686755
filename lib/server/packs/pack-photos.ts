import 'server-only';
import { z } from 'zod';
import { lastChargeOf, type LastCharge } from '@/lib/db/packs/last-charge';
import { bytesOfPackPhoto, keepPackPhoto, type PackPhoto, photoOfPack, removePackPhoto } from '@/lib/db/packs/pack-photos';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { cleanPhotos, filesOf } from '../photos/clean-photos';

export type { LastCharge, PackPhoto };

export const PackPhotoSchema = z.looseObject({ packId: z.string({ error: 'The form has lost its pack' }).min(1) });
const NO_SUCH = 'Your register has no such pack';

/** What the page of a pack shows besides its history. */
export async function besidePack(actor: Actor, packId: string): Promise<{ readonly photo: PackPhoto | null; readonly lastCharge: LastCharge | null }> {
  const [db, scope] = [database(), schoolScope(actor)];
  const [photo, lastCharge] = await Promise.all([photoOfPack(db, scope, packId), lastChargeOf(db, scope, packId)]);
  return { photo, lastCharge };
}

/** The bytes of a pack's photo, or null. */
export function readPackPhoto(actor: Actor, packId: string, photoId: string) {
  return bytesOfPackPhoto(database(), schoolScope(actor), packId, photoId);
}

/** Keeps a photo, drawn anew, in the place of the one before. */
export async function addPackPhoto(actor: Actor, raw: z.output<typeof PackPhotoSchema>): Promise<Outcome> {
  const files = filesOf(raw['photo']);
  if (files.length === 0) return refused('photo', 'Choose a photo');
  const { kept: [photo], refused: why } = await cleanPhotos(files.slice(0, 1));
  if (photo === undefined) return refused('photo', `Not kept, because of ${why.join('; ')}`);
  return (await keepPackPhoto(database(), actor, new Date(), raw.packId, photo)) ? { ok: true, done: 'Kept.' } : refused(null, NO_SUCH);
}

export async function takePackPhotoAway(actor: Actor, { packId }: z.output<typeof PackPhotoSchema>): Promise<Outcome> {
  return (await removePackPhoto(database(), actor, new Date(), packId)) ? { ok: true, done: 'Taken away, for good.' } : refused(null, 'It has no photo');
}
