import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import type { Author } from './begin-assessment';
import { notDone, type NotDone } from './moves';

/** The officer has looked again: what was asked is settled, with how. The request stays on record. */
export async function settleReviewOf(db: Db, by: Author, at: Date, { versionId, requestId, how }: { readonly versionId: string; readonly requestId: string; readonly how: string }): Promise<{ readonly ok: true } | NotDone> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<{ value: { ok: true } | NotDone; events: readonly AuditEvent[] }> => {
    const { count } = await tx.reviewRequest.updateMany({ where: { ...scope, id: requestId, versionId, settledAt: null }, data: { settledById: by.personId, settledAt: at, settledHow: how } });
    if (count === 0) return { value: notDone('It is settled already.'), events: [] };
    return { value: { ok: true }, events: [{ kind: 'review.settled', subjectId: versionId, data: { requestId, how } }] };
  });
}
