import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { DATA_REVISION, type DocumentKind } from './write-document';

export interface StoredFile { readonly number: string; readonly bytes: Uint8Array; readonly sha256: string }

/** Papers of one kind and of one thing. */
export type PapersOf =
  | { readonly kind: 'assessment'; readonly versionId: string }
  | { readonly kind: 'incident'; readonly incidentId: string }
  | { readonly kind: Exclude<DocumentKind, 'assessment' | 'incident'>; readonly eventId: string };

/** The last revision of the latest paper of a thing, or of the paper of a number; null when there is none. */
export async function fileOf(db: Db, scope: SchoolScope, of: PapersOf, number?: string): Promise<StoredFile | null> {
  const document = await db.document.findFirst({
    where: { ...scope, ...of, ...(number === undefined ? {} : { number }) },
    orderBy: { createdAt: 'desc' },
    select: { number: true, revisions: { orderBy: { number: 'desc' }, take: 1, select: { bytes: true, sha256: true } } },
  });
  const last = document?.revisions[0];
  return document === null || last === undefined ? null : { number: document.number, bytes: new Uint8Array(last.bytes), sha256: last.sha256 };
}

/** What the latest paper of a thing was made from, as it was kept with it; null when there is none. */
export async function dataOf(db: Db, scope: SchoolScope, of: PapersOf): Promise<Uint8Array | null> {
  const document = await db.document.findFirst({
    where: { ...scope, ...of },
    orderBy: { createdAt: 'desc' },
    select: { revisions: { where: { number: DATA_REVISION }, take: 1, select: { bytes: true } } },
  });
  const data = document?.revisions[0];
  return data === undefined ? null : new Uint8Array(data.bytes);
}

/** The paper that waits for the officer's signature, with its last revision; null when there is none. */
export async function waitingPaperOf(db: Pick<Tx, 'document'>, scope: SchoolScope, of: PapersOf) {
  return db.document.findFirst({
    where: { ...scope, ...of, state: 'part-signed', replacedAt: null, withdrawnAt: null },
    orderBy: { createdAt: 'desc' },
    select: { id: true, number: true, revision: true, fingerprint: true, createdAt: true, format: true, language: true, revisions: { orderBy: { number: 'desc' }, take: 1, select: { bytes: true, number: true } } },
  });
}

/** The number of the paper that was made of just these facts and still counts; null when there is none. It need not be made again. */
export async function keptPaperOf(db: Db, scope: SchoolScope, of: PapersOf, fingerprint: string): Promise<string | null> {
  const document = await db.document.findFirst({ where: { ...scope, ...of, fingerprint, replacedAt: null, withdrawnAt: null }, orderBy: { createdAt: 'desc' }, select: { number: true } });
  return document?.number ?? null;
}

/** Every paper of a thing, the latest first, with who signed it. */
export async function papersOf(db: Db, scope: SchoolScope, of: { readonly incidentId: string } | { readonly eventId: string }) {
  return db.document.findMany({
    where: { ...scope, ...of }, orderBy: { createdAt: 'desc' },
    select: { id: true, number: true, kind: true, state: true, fingerprint: true, createdAt: true, replacedAt: true, withdrawnAt: true, signatures: { orderBy: { at: 'asc' }, select: { part: true, signerName: true, at: true } } },
  });
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
