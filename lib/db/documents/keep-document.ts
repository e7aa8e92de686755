import type { AuditEvent } from '@/lib/audit/event';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { addSignature, type DocumentState, type NewDocument, sha256Of, type SignatureOf, writeDocument } from './write-document';

/** A signature as it is kept, with the certificate that the log names. */
export interface MadeSignature extends SignatureOf { readonly certificateFingerprint: string }

/**
 * Keeps a new paper with its first signature, if somebody signs it, in the place of earlier ones of the same kind and
 * thing. Part of a transaction of the caller, who writes the returned events into the log beside their own.
 */
export async function keepDocument(tx: Tx, scope: SchoolScope, at: Date, document: NewDocument, made: MadeSignature | null, state: DocumentState): Promise<readonly AuditEvent[]> {
  const { id, number, kind, fingerprint, bytes } = document;
  const earlier = await tx.document.findMany({ where: { ...scope, ...document.of, scoreId: undefined, kind, replacedAt: null }, select: { id: true, number: true } });
  await writeDocument(tx, scope, at, document, made === null ? null : signatureOf(made), state);
  await tx.document.updateMany({ where: { ...scope, id: { in: earlier.map((one) => one.id) } }, data: { replacedAt: at, replacedById: id } });
  const [unsigned, signed] = bytes;
  return [
    { kind: 'document.made', subjectId: id, data: { number, kind, fingerprint, sha256: sha256Of(unsigned) } },
    ...earlier.map((one): AuditEvent => ({ kind: 'document.replaced', subjectId: one.id, data: { number: one.number, byNumber: number } })),
    ...(made === null || signed === undefined ? [] : [signedEvent(id, number, 1, made, sha256Of(signed))]),
  ];
}

/** What a second signature is added to: a paper by its id and number, as it stood when it was signed. */
export interface Countersigned { readonly documentId: string; readonly number: string; /** revision of the document before */ readonly before: number; readonly bytes: Uint8Array }

/** Adds the officer's signature to a waiting paper. @returns the events, or null when somebody was faster */
export async function countersign(tx: Tx, scope: SchoolScope, at: Date, { documentId, number, before, bytes }: Countersigned, made: MadeSignature): Promise<readonly AuditEvent[] | null> {
  if (!(await addSignature(tx, scope, at, documentId, before, bytes, signatureOf(made)))) return null;
  return [signedEvent(documentId, number, before + 1, made, sha256Of(bytes))];
}

/** Takes all papers of a thing out of force, with a reason; those replaced before stay what they are. */
export async function withdrawDocuments(tx: Tx, scope: SchoolScope, byId: string, at: Date, of: { readonly eventId: string } | { readonly incidentId: string }, reason: string): Promise<readonly AuditEvent[]> {
  const papers = await tx.document.findMany({ where: { ...scope, ...of, replacedAt: null, withdrawnAt: null }, select: { id: true, number: true } });
  await tx.document.updateMany({ where: { ...scope, id: { in: papers.map((one) => one.id) } }, data: { withdrawnAt: at, withdrawnById: byId, withdrawnReason: reason } });
  return papers.map((one) => ({ kind: 'document.withdrawn', subjectId: one.id, data: { number: one.number, reason } }));
}

const signatureOf = ({ part, signerId, signerName, signerPost, certificateId }: MadeSignature): SignatureOf => ({ part, signerId, signerName, signerPost, certificateId });

function signedEvent(subjectId: string, number: string, revision: number, { part, certificateFingerprint }: MadeSignature, sha256: string): AuditEvent {
  return { kind: 'document.signed', subjectId, data: { number, part, revision, certificateFingerprint, sha256 } };
}
