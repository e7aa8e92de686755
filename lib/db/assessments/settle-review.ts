import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import type { Author } from './begin-assessment';
import { type Done, notDone, nothing, type Written } from './not-done';

/** The officer has looked again: what was asked is settled, with how. The request stays on record. */
export async function settleReviewOf(db: Db, by: Author, at: Date, { versionId, requestId, how }: { readonly versionId: string; readonly requestId: string; readonly how: string }): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const { count } = await tx.reviewRequest.updateMany({ where: { ...scope, id: requestId, versionId, settledAt: null }, data: { settledById: by.personId, settledAt: at, settledHow: how } });
    if (count === 0) return nothing(notDone('It is settled already.'));
    return { value: { ok: true }, events: [{ kind: 'review.settled', subjectId: versionId, data: { requestId, how } }] };
  });
}
