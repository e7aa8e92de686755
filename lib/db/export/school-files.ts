import type { Db } from '../client';
import type { SchoolScope } from '../scope';

export interface SchoolFile { readonly name: string; readonly bytes: Uint8Array }

/** Every paper of a school as it was last signed, one after the other, so that no more than one is held at a time. */
export async function* papersOf(db: Db, scope: SchoolScope): AsyncGenerator<SchoolFile> {
  const documents = await db.document.findMany({ where: scope, select: { id: true, number: true }, orderBy: { createdAt: 'asc' } });
  for (const { id, number } of documents) {
    const revision = await db.documentRevision.findFirst({ where: { ...scope, documentId: id }, orderBy: { number: 'desc' }, select: { bytes: true } });
    if (revision !== null) yield { name: `${number}.pdf`, bytes: revision.bytes };
  }
}

const ENDINGS: Readonly<Record<string, string>> = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp', 'application/pdf': 'pdf' };

/** Every picture and attachment of a school that was not taken away, by its id. */
export async function* picturesOf(db: Db, scope: SchoolScope): AsyncGenerator<SchoolFile> {
  const files = await db.storedFile.findMany({ where: { ...scope, byteCount: { gt: 0 } }, select: { id: true } });
  for (const { id } of files) {
    const file = await db.storedFile.findFirst({ where: { ...scope, id }, select: { bytes: true, mimeType: true } });
    if (file !== null) yield { name: `${id}.${ENDINGS[file.mimeType] ?? 'bin'}`, bytes: file.bytes };
  }
}
