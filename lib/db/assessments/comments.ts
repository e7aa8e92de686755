import { type CommentInput, type CommentRecord, mayComment, mayWithdraw } from '@/lib/assessments/comments';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Author } from './begin-assessment';
import { type Done, notDone, NOT_THERE, nothing, type NotDone, type Written } from './not-done';

/** What was said of a version, in the order in which it was written; not what was taken back. */
export async function listComments(db: Db, scope: SchoolScope, versionId: string): Promise<readonly CommentRecord[]> {
  const rows = await db.comment.findMany({ where: { ...scope, versionId, withdrawnAt: null }, orderBy: [{ at: 'asc' }, { id: 'asc' }], include: { settledBy: { select: { person: { select: { name: true } } } } } });
  return rows.map(({ id, questionId, replyToId, text, byId, byName, at, settledAt, settledBy }) => ({ id, questionId, replyToId, text, byId, byName, at, settledAt, settledByName: settledBy?.person.name ?? null }));
}

/** Adds a remark, or a reply to one. */
export async function addComment(db: Db, by: Author, at: Date, { versionId, questionId, replyToId, text }: CommentInput): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const refusal = await closedFor(tx, scope, versionId);
    if (refusal !== null) return nothing(refusal);
    const before = replyToId === null ? null : await tx.comment.findFirst({ where: { ...scope, id: replyToId, versionId, withdrawnAt: null }, select: { questionId: true } });
    if (replyToId !== null && before === null) return nothing(notDone('What you answer to was taken back meanwhile.'));
    const about = before?.questionId ?? questionId;
    const { id } = await tx.comment.create({ data: { ...scope, versionId, questionId: about, replyToId, text, byId: by.personId, byName: by.name, at }, select: { id: true } });
    return { value: { ok: true }, events: [{ kind: 'comment.added', subjectId: versionId, data: { commentId: id, questionId: about, riskId: null, text } }] };
  });
}

async function closedFor(tx: Tx, scope: SchoolScope, versionId: string): Promise<NotDone | null> {
  const version = await tx.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, select: { state: true } });
  if (version === null) return NOT_THERE;
  const decision = mayComment(version.state);
  return decision.ok ? null : notDone(decision.why);
}

/** Settles a remark: whoever asked has been answered. */
export async function settleComment(db: Db, by: Author, at: Date, versionId: string, commentId: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const refusal = await closedFor(tx, scope, versionId);
    if (refusal !== null) return nothing(refusal);
    const { count } = await tx.comment.updateMany({ where: { ...scope, id: commentId, versionId, settledAt: null, withdrawnAt: null }, data: { settledById: by.personId, settledAt: at } });
    if (count === 0) return nothing(notDone('It is settled already.'));
    return { value: { ok: true }, events: [{ kind: 'comment.settled', subjectId: versionId, data: { commentId } }] };
  });
}

/** Takes a remark back; the log keeps it. */
export async function withdrawComment(db: Db, by: Author, at: Date, versionId: string, commentId: string): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const comment = await tx.comment.findFirst({ where: { ...scope, id: commentId, versionId, withdrawnAt: null }, select: { byId: true, settledAt: true, replies: { where: { withdrawnAt: null }, select: { id: true } } } });
    if (comment === null) return nothing(notDone('It is not there any more.'));
    const decision = mayWithdraw(comment, by.personId);
    if (!decision.ok) return nothing(notDone(decision.why));
    if (comment.replies.length > 0) return nothing(notDone('Somebody has answered it, so it stays. Settle it instead.'));
    await tx.comment.updateMany({ where: { ...scope, id: commentId, withdrawnAt: null }, data: { withdrawnAt: at } });
    return { value: { ok: true }, events: [{ kind: 'comment.withdrawn', subjectId: versionId, data: { commentId } }] };
  });
}
