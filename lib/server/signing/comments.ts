import 'server-only';
import { can } from '@/lib/access/can';
import type { CommentInput, LookInput, OfCommentInput } from '@/lib/assessments/comments';
import { addComment, settleComment, withdrawComment } from '@/lib/db/assessments/comments';
import { lookAt } from '@/lib/db/assessments/looks';
import { readVersion } from '@/lib/db/assessments/read-version';
import type { NotDone } from '@/lib/db/assessments/not-done';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

const NOT_ALLOWED = 'Your role does not comment on assessments';
const outcome = (done: { readonly ok: true } | NotDone, words: string): Outcome => (done.ok ? { ok: true, done: words } : refused(null, done.why));

/** A remark on an answer or on the whole, or a reply to one. */
export async function comment(input: CommentInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.comment')) return refused(null, NOT_ALLOWED);
  return outcome(await addComment(database(), actor, new Date(), input), 'Written.');
}

export async function settle({ versionId, commentId }: OfCommentInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.comment')) return refused(null, NOT_ALLOWED);
  return outcome(await settleComment(database(), actor, new Date(), versionId, commentId), 'Settled.');
}

export async function takeBack({ versionId, commentId }: OfCommentInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.comment')) return refused(null, NOT_ALLOWED);
  return outcome(await withdrawComment(database(), actor, new Date(), versionId, commentId), 'Taken back.');
}

/** The officer has looked at these answers as they are. */
export async function look({ versionId, questions }: LookInput, actor: Actor): Promise<Outcome> {
  const version = await readVersion(database(), schoolScope(actor), versionId);
  if (version === null) return refused(null, 'This assessment is not there');
  if (!can(actor.role, 'assessment.look', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } })) return refused(null, 'You prepared it, so somebody else looks at it');
  await lookAt(database(), actor, new Date(), versionId, questions);
  return { ok: true, done: 'Noted.' };
}
