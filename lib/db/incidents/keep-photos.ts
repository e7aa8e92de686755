import type { AuditEvent } from '@/lib/audit/event';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import type { Writing } from '../packs/write-pack';

/** Keeps photos of an incident, inside of the transaction of the caller, who writes the events returned. */
export async function keepPhotos({ tx, scope, by, at }: Writing, incidentId: string, photos: readonly PhotoToKeep[]): Promise<readonly AuditEvent[]> {
  const events: AuditEvent[] = [];
  for (const { bytes, sha256, ...rest } of photos) {
    const file = await tx.storedFile.create({ data: { ...scope, ...rest, bytes, sha256, byteCount: bytes.byteLength, byId: by.personId, byName: by.name, createdAt: at }, select: { id: true } });
    await tx.incidentPhoto.create({ data: { ...scope, incidentId, fileId: file.id, at } });
    events.push({ kind: 'incident.photo-added', subjectId: incidentId, data: { fileId: file.id, sha256 } });
  }
  return events;
}
