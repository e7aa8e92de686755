import type { EvidenceListed, EvidenceToKeep } from '@/lib/assessments/evidence';
import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** Keeps photos beside answers, inside of the transaction of the caller, who writes the events returned. */
export async function keepEvidence(tx: Tx, scope: SchoolScope, by: AuditAuthor, at: Date, versionId: string, photos: readonly EvidenceToKeep[]): Promise<readonly AuditEvent[]> {
  const events: AuditEvent[] = [];
  for (const { questionId, bytes, sha256, ...rest } of photos) {
    const file = await tx.storedFile.create({ data: { ...scope, ...rest, bytes, sha256, byteCount: bytes.byteLength, byId: by.personId, byName: by.name, createdAt: at }, select: { id: true } });
    await tx.answerEvidence.create({ data: { ...scope, versionId, questionId, fileId: file.id, byId: by.personId, byName: by.name, at } });
    events.push({ kind: 'evidence.added', subjectId: versionId, data: { questionId, fileId: file.id, sha256 } });
  }
  return events;
}

/** Takes a photo away, for good: its bytes go, that it was there stays. Nothing happens when it is not there. */
export async function dropEvidence(tx: Tx, scope: SchoolScope, at: Date, versionId: string, evidenceId: string): Promise<readonly AuditEvent[]> {
  const there = await tx.answerEvidence.findFirst({ where: { ...scope, versionId, id: evidenceId, removedAt: null }, select: { fileId: true, questionId: true } });
  if (there === null) return [];
  await tx.answerEvidence.updateMany({ where: { ...scope, id: evidenceId }, data: { removedAt: at } });
  await tx.storedFile.updateMany({ where: { ...scope, id: there.fileId }, data: { bytes: new Uint8Array(), byteCount: 0 } });
  return [{ kind: 'evidence.removed', subjectId: versionId, data: there }];
}

/** The photos beside the answers of a version, the oldest first, without their bytes. */
export async function listEvidence(db: Db, scope: SchoolScope, versionId: string): Promise<readonly EvidenceListed[]> {
  return db.answerEvidence.findMany({ where: { ...scope, versionId, removedAt: null }, orderBy: [{ at: 'asc' }, { id: 'asc' }], select: { id: true, questionId: true, byName: true, at: true } });
}

/** The bytes of a photo of a version, or null when there is none of this id, or it was taken away. */
export async function readEvidence(db: Db, scope: SchoolScope, versionId: string, evidenceId: string): Promise<{ readonly mimeType: string; readonly bytes: Uint8Array<ArrayBuffer> } | null> {
  const found = await db.answerEvidence.findFirst({ where: { ...scope, versionId, id: evidenceId, removedAt: null }, select: { file: { select: { mimeType: true, bytes: true } } } });
  return found?.file ?? null;
}
