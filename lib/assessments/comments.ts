import { z } from 'zod';
import { line, listOf, optionalLine } from '@/lib/forms/fields';
import { type Decision, isOpen, no, yes } from './standing';

/** A remark on an answer or on the whole, with what was said to it. */
export interface CommentRecord {
  readonly id: string;
  readonly questionId: string | null;
  readonly replyToId: string | null;
  readonly text: string;
  readonly byId: string;
  readonly byName: string;
  readonly at: Date;
  readonly settledByName: string | null;
  readonly settledAt: Date | null;
}

const NO_VERSION = 'No assessment was named';
export const CommentSchema = z.object({ versionId: line(NO_VERSION), questionId: optionalLine(), replyToId: optionalLine(), text: line('Write what you want to say', 2000) });
export type CommentInput = z.output<typeof CommentSchema>;

export const OfCommentSchema = z.object({ versionId: line(NO_VERSION), commentId: line('No comment was named') });
export type OfCommentInput = z.output<typeof OfCommentSchema>;

export const LookSchema = z.object({ versionId: line(NO_VERSION), questions: listOf(z.string()).refine((ids) => ids.length > 0, 'No answer was named') });
export type LookInput = z.output<typeof LookSchema>;

/** Whether something may still be said: while it is prepared or checked. What is signed has its say. */
export function mayComment(state: string): Decision<true> {
  return isOpen(state) || state === 'with-officer' ? yes(true) : no('This version is closed. Say it in the next one, or suspend it.');
}

/** Only whoever wrote it takes it back, and only while nobody has settled it. */
export function mayWithdraw(comment: Pick<CommentRecord, 'byId' | 'settledAt'>, personId: string): Decision<true> {
  if (comment.byId !== personId) return no('Only the person who wrote it takes it back.');
  return comment.settledAt === null ? yes(true) : no('It is settled already.');
}

/** A remark with its replies in the order in which they were written. */
export interface Thread { readonly first: CommentRecord; readonly replies: readonly CommentRecord[] }

/** Remarks with what was answered to each; a reply to a reply stands under the same remark. */
export function threadsOf(comments: readonly CommentRecord[]): readonly Thread[] {
  const byId = new Map(comments.map((comment) => [comment.id, comment]));
  const rootOf = (comment: CommentRecord): CommentRecord => {
    const before = comment.replyToId === null ? undefined : byId.get(comment.replyToId);
    return before === undefined ? comment : rootOf(before);
  };
  const roots = comments.filter((comment) => rootOf(comment) === comment);
  return roots.map((first) => ({ first, replies: comments.filter((comment) => comment !== first && rootOf(comment) === first) }));
}

/** Whether somebody still has to answer it. */
export function isUnsettled({ first }: Thread): boolean { return first.settledAt === null; }
