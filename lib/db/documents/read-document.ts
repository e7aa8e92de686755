import type { Db } from '../client';
import type { SchoolScope } from '../scope';

export interface StoredFile { readonly number: string; readonly bytes: Uint8Array; readonly sha256: string }

/** The last revision of the latest paper of a version, or of the paper of a number; null when there is none. */
export async function fileOfVersion(db: Db, scope: SchoolScope, versionId: string, number?: string): Promise<StoredFile | null> {
  const document = await db.document.findFirst({
    where: { ...scope, versionId, kind: 'assessment', ...(number === undefined ? {} : { number }) },
    orderBy: { createdAt: 'desc' },
    select: { number: true, revisions: { orderBy: { number: 'desc' }, take: 1, select: { bytes: true, sha256: true } } },
  });
  const last = document?.revisions[0];
  return document === null || last === undefined ? null : { number: document.number, bytes: new Uint8Array(last.bytes), sha256: last.sha256 };
}

/** Number of the revision that holds the paper as data: what the file was made from, for the page on screen. */
export const DATA_REVISION = 0;

/** What the latest paper of a version was made from, as it was kept with it; null when there is none. */
export async function dataOfVersion(db: Db, scope: SchoolScope, versionId: string): Promise<Uint8Array | null> {
  const document = await db.document.findFirst({
    where: { ...scope, versionId, kind: 'assessment' },
    orderBy: { createdAt: 'desc' },
    select: { revisions: { where: { number: DATA_REVISION }, take: 1, select: { bytes: true } } },
  });
  const data = document?.revisions[0];
  return data === undefined ? null : new Uint8Array(data.bytes);
}

export interface KeptResult { readonly inputJson: string; readonly resultJson: string; readonly resultHash: string; readonly contentVersion: string; readonly createdAt: Date }

/** The result that the latest paper of a version rests on. */
export async function resultOfPaper(db: Db, scope: SchoolScope, versionId: string): Promise<KeptResult | null> {
  const document = await db.document.findFirst({
    where: { ...scope, versionId, kind: 'assessment', scoreId: { not: null } },
    orderBy: { createdAt: 'desc' },
    select: { score: { select: { inputJson: true, resultJson: true, resultHash: true, contentVersion: true, createdAt: true } } },
  });
  return document?.score ?? null;
}
