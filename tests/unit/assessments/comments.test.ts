import { describe, expect, it } from 'vitest';
import { type CommentRecord, isUnsettled, mayComment, mayWithdraw, threadsOf } from '@/lib/assessments/comments';

const comment = (id: string, over: Partial<CommentRecord> = {}): CommentRecord => ({ id, questionId: null, replyToId: null, text: id, byId: 'p', byName: 'K. M.', at: new Date(0), settledByName: null, settledAt: null, ...over });

describe('comments', () => {
  it('are written while it is prepared or checked, not once it is signed', () => {
    for (const state of ['draft', 'returned', 'with-officer']) expect(mayComment(state).ok).toBe(true);
    for (const state of ['signed', 'superseded', 'withdrawn']) expect(mayComment(state).ok).toBe(false);
  });

  it('are taken back only by whoever wrote them, and not once they are settled', () => {
    expect(mayWithdraw(comment('a'), 'p').ok).toBe(true);
    expect(mayWithdraw(comment('a'), 'q').ok).toBe(false);
    expect(mayWithdraw(comment('a', { settledAt: new Date(1) }), 'p').ok).toBe(false);
  });

  it('stand with their replies, also with a reply to a reply, and a reply to what was taken back stands by itself', () => {
    const all = [comment('a'), comment('b', { replyToId: 'a' }), comment('c', { replyToId: 'b' }), comment('d', { replyToId: 'gone' }), comment('e', { settledAt: new Date(1) })];
    expect(threadsOf(all).map(({ first, replies }) => [first.id, ...replies.map(({ id }) => id)])).toEqual([['a', 'b', 'c'], ['d'], ['e']]);
    expect(threadsOf(all).filter(isUnsettled).map(({ first }) => first.id)).toEqual(['a', 'd']);
  });
});
