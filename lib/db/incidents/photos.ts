import { MOST_PHOTOS, type PhotoToKeep } from '@/lib/incidents/photo';
import { NOT_OPEN } from '@/lib/incidents/standing';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import type { SchoolScope } from '../scope';
import { changeIncident, type IncidentChanged, refused } from './change-incident';
import { keepPhotos } from './keep-photos';

/** Adds photos to an incident that is open. */
export async function addPhotos(db: Db, by: Member, at: Date, incidentId: string, photos: readonly PhotoToKeep[]): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.correct' }, async (writing, incident) => {
    if (incident.state === 'closed') return refused([NOT_OPEN]);
    if (incident.photos.filter(({ removedAt }) => removedAt === null).length + photos.length > MOST_PHOTOS) return refused([`An incident has at most ${MOST_PHOTOS} photos`], 'photos');
    return { ok: true, events: await keepPhotos(writing, incidentId, photos) };
  });
}

/** Takes a photo away, for good: its bytes go, that it was there and why it went stays. */
export async function removePhoto(db: Db, by: Member, at: Date, { incidentId, photoId, reason }: { readonly incidentId: string; readonly photoId: string; readonly reason: string }): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.close' }, async ({ tx, scope }) => {
    const photo = await tx.incidentPhoto.findFirst({ where: { ...scope, id: photoId, incidentId, removedAt: null }, select: { fileId: true } });
    if (photo === null) return refused(['There is no such photo']);
    await tx.incidentPhoto.updateMany({ where: { ...scope, id: photoId }, data: { removedAt: at } });
    await tx.storedFile.updateMany({ where: { ...scope, id: photo.fileId }, data: { bytes: new Uint8Array(), byteCount: 0 } });
    return { ok: true, events: [{ kind: 'incident.photo-removed', subjectId: incidentId, data: { fileId: photo.fileId, reason } }] };
  });
}

/** The bytes of a photo and who recorded its incident, or null when there is none of this id, or it was taken away. */
export async function findPhoto(db: Pick<Db, 'incidentPhoto'>, scope: SchoolScope, incidentId: string, photoId: string): Promise<{ readonly mimeType: string; readonly bytes: Uint8Array<ArrayBuffer>; readonly byId: string } | null> {
  const photo = await db.incidentPhoto.findFirst({
    where: { ...scope, id: photoId, incidentId, removedAt: null },
    select: { file: { select: { mimeType: true, bytes: true } }, incident: { select: { byId: true } } },
  });
  return photo === null ? null : { ...photo.file, byId: photo.incident.byId };
}
