import { createHash } from 'node:crypto';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** Number of the revision that holds the paper as data: what the file was made from, for the page on screen. */
export const DATA_REVISION = 0;

/** Made: a paper that nobody signs. */
export type DocumentState = 'made' | 'part-signed' | 'signed';

export type DocumentKind = 'assessment' | 'incident' | 'event' | 'response-card' | 'pack-list' | 'briefing';

/** A paper as it was made, with the signature of the first who signed it. */
export interface NewDocument {
  readonly id: string;
  readonly number: string;
  readonly kind: DocumentKind;
  readonly title: string;
  readonly format: 'A4' | 'Letter';
  readonly language: string;
  readonly fingerprint: string;
  /** what it is of */
  readonly of: { readonly versionId?: string; readonly scoreId?: string; readonly incidentId?: string; readonly eventId?: string };
  /** revision 1 is the paper without signatures, revision 2 with the first, when somebody signs it */
  readonly bytes: readonly [Uint8Array] | readonly [Uint8Array, Uint8Array];
  /** the paper as data, packed: what the page on screen is drawn from; kept as revision 0 */
  readonly data?: Uint8Array;
}
export interface SignatureOf { readonly part: 'preparer' | 'officer'; readonly signerId: string; readonly signerName: string; readonly signerPost: string; readonly certificateId: string }

export const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Keeps a new paper, its revisions and who signed it. */
export async function writeDocument(tx: Tx, scope: SchoolScope, at: Date, document: NewDocument, signature: SignatureOf | null, state: DocumentState): Promise<void> {
  const { bytes, data, of, ...columns } = document;
  await tx.document.create({ data: { ...scope, ...columns, ...of, state, createdAt: at } });
  if (data !== undefined) await writeRevision(tx, scope, at, document.id, DATA_REVISION, data);
  for (const [index, revision] of bytes.entries()) await writeRevision(tx, scope, at, document.id, index + 1, revision);
  if (signature !== null) await tx.signature.create({ data: { ...scope, ...signature, documentId: document.id, documentRevision: bytes.length, at } });
}

/** Adds the next revision with the next signature. @returns whether nobody was faster */
export async function addSignature(tx: Tx, scope: SchoolScope, at: Date, documentId: string, before: number, bytes: Uint8Array, signature: SignatureOf): Promise<boolean> {
  const { count } = await tx.document.updateMany({ where: { ...scope, id: documentId, state: 'part-signed', revision: before, replacedAt: null, withdrawnAt: null }, data: { state: 'signed', revision: before + 1 } });
  if (count !== 1) return false;
  const { _max } = await tx.documentRevision.aggregate({ where: { ...scope, documentId }, _max: { number: true } });
  const number = (_max.number ?? 0) + 1;
  await writeRevision(tx, scope, at, documentId, number, bytes);
  await tx.signature.create({ data: { ...scope, ...signature, documentId, documentRevision: number, at } });
  return true;
}

async function writeRevision(tx: Tx, scope: SchoolScope, at: Date, documentId: string, number: number, bytes: Uint8Array): Promise<void> {
  await tx.documentRevision.create({ data: { ...scope, documentId, number, bytes: Uint8Array.from(bytes), byteCount: bytes.length, sha256: sha256Of(bytes), createdAt: at } });
}
