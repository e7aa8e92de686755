import type { Db } from '../client';
import { DATA_REVISION } from '../documents/write-document';
import { schoolScope } from '../scope';
import type { EventLink } from './links';

/** The file that a link leads to: what it was made from, its last revision, and what has become of it, its event and the assessment behind it. */
export async function sharedDocument(db: Db, { schoolId, documentId }: Pick<EventLink, 'schoolId' | 'documentId'>) {
  if (documentId === null) return null;
  const document = await db.document.findFirst({
    where: { ...schoolScope({ schoolId }), id: documentId },
    select: {
      number: true, title: true, withdrawnReason: true,
      revisions: { orderBy: { number: 'desc' }, select: { number: true, bytes: true, sha256: true } },
      signatures: { orderBy: { at: 'asc' }, select: { signerName: true, signerPost: true, at: true } },
      event: {
        select: {
          endsAt: true, state: true,
          version: { select: { state: true, supersededAt: true, withdrawnAt: true, suspensions: { where: { liftedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { at: true } } } },
        },
      },
    },
  });
  const [last, data] = [document?.revisions[0], document?.revisions.find(({ number }) => number === DATA_REVISION)];
  if (document === null || document.event === null || last === undefined || data === undefined) return null;
  const { number, title, withdrawnReason, signatures, event } = document;
  return { number, title, withdrawnReason, signatures, event, data: new Uint8Array(data.bytes), file: { number, bytes: new Uint8Array(last.bytes), sha256: last.sha256 } };
}
