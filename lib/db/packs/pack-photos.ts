import type { AuditEvent } from '@/lib/audit/event';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** A photo of a pack as its page shows it. */
export interface PackPhoto { readonly id: string; readonly at: Date; readonly byName: string; readonly widthPx: number; readonly heightPx: number }

/** The photo of a pack that stands for it now, or null. */
export async function photoOfPack(db: Pick<Tx, 'packPhoto'>, scope: SchoolScope, packId: string): Promise<PackPhoto | null> {
  const row = await db.packPhoto.findFirst({ where: { ...scope, packId, removedAt: null }, orderBy: { at: 'desc' }, select: { id: true, at: true, file: { select: { byName: true, widthPx: true, heightPx: true } } } });
  return row === null ? null : { id: row.id, at: row.at, byName: row.file.byName, widthPx: row.file.widthPx ?? 1, heightPx: row.file.heightPx ?? 1 };
}

/** The bytes of a photo of a pack, or null when there is none of this id, or it was taken away. */
export async function bytesOfPackPhoto(db: Pick<Tx, 'packPhoto'>, scope: SchoolScope, packId: string, photoId: string): Promise<{ readonly mimeType: string; readonly bytes: Uint8Array<ArrayBuffer> } | null> {
  const row = await db.packPhoto.findFirst({ where: { ...scope, id: photoId, packId, removedAt: null }, select: { file: { select: { mimeType: true, bytes: true } } } });
  return row?.file ?? null;
}

/**
 * Keeps a photo of a pack in the place of the one before, whose bytes go.
 * @returns false when the school has no such pack
 */
export async function keepPackPhoto(db: Db, by: Member, at: Date, packId: string, { bytes, sha256, ...rest }: PhotoToKeep): Promise<boolean> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx) => {
    const pack = await tx.pack.findFirst({ where: { ...scope, id: packId }, select: { label: true } });
    if (pack === null) return { value: false, events: [] };
    const gone = await takeAway(tx, scope, packId, at);
    const file = await tx.storedFile.create({ data: { ...scope, ...rest, bytes, sha256, byteCount: bytes.byteLength, byId: by.personId, byName: by.name, createdAt: at }, select: { id: true } });
    await tx.packPhoto.create({ data: { ...scope, packId, fileId: file.id, at } });
    return { value: true, events: [...gone.map((fileId) => removed(packId, pack.label, fileId)), { kind: 'pack.photo-added', subjectId: packId, data: { label: pack.label, fileId: file.id, sha256 } }] };
  });
}

/** Takes the photo of a pack away, for good. @returns false when there is none */
export async function removePackPhoto(db: Db, by: Member, at: Date, packId: string): Promise<boolean> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx) => {
    const pack = await tx.pack.findFirst({ where: { ...scope, id: packId }, select: { label: true } });
    const gone = pack === null ? [] : await takeAway(tx, scope, packId, at);
    return { value: gone.length > 0, events: gone.map((fileId) => removed(packId, pack?.label ?? '', fileId)) };
  });
}

async function takeAway(tx: Tx, scope: SchoolScope, packId: string, at: Date): Promise<readonly string[]> {
  const rows = await tx.packPhoto.findMany({ where: { ...scope, packId, removedAt: null }, select: { fileId: true } });
  const fileIds = rows.map(({ fileId }) => fileId);
  await tx.packPhoto.updateMany({ where: { ...scope, packId, removedAt: null }, data: { removedAt: at } });
  await tx.storedFile.updateMany({ where: { ...scope, id: { in: fileIds } }, data: { bytes: new Uint8Array(), byteCount: 0 } });
  return fileIds;
}

function removed(packId: string, label: string, fileId: string): AuditEvent {
  return { kind: 'pack.photo-removed', subjectId: packId, data: { label, fileId } };
}
