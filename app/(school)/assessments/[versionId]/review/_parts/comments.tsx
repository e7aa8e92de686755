import type { ReactNode } from 'react';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import type { CommentRecord, Thread } from '@/lib/assessments/comments';
import { type DateStyle, shortDayWords } from '@/lib/wording/dates';
import { commentAction, settleCommentAction, takeBackCommentAction } from '../actions';

interface ThreadsProps { readonly threads: readonly Thread[]; readonly versionId: string; readonly actorId: string; readonly mayComment: boolean; readonly style: DateStyle }

/** Remarks with what was answered, and what can be done with each. */
export function Threads({ threads, versionId, actorId, mayComment, style }: ThreadsProps) {
  return threads.map(({ first, replies }) => (
    <div key={first.id} className="thread" id={`comment-${first.id}`}>
      <Remark comment={first} style={style} />
      {replies.map((reply) => <Remark key={reply.id} comment={reply} style={style} />)}
      {first.settledAt !== null ? <p className="small muted">Settled by {first.settledByName}</p> : !mayComment ? null : (
        <>
          <CommentForm versionId={versionId} replyToId={first.id} about={first.text} />
          <div className="row">
            <SmallForm action={settleCommentAction} id={`settle-${first.id}`} versionId={versionId} commentId={first.id}>Settled<span className="vh">: {first.text}</span></SmallForm>
            {first.byId === actorId && replies.length === 0 ? <SmallForm action={takeBackCommentAction} id={`take-back-${first.id}`} versionId={versionId} commentId={first.id}>Take back<span className="vh">: {first.text}</span></SmallForm> : null}
          </div>
        </>
      )}
    </div>
  ));
}

function Remark({ comment, style }: { readonly comment: CommentRecord; readonly style: DateStyle }) {
  return <div><p className="small"><b>{comment.byName}</b> <span className="muted"><time dateTime={comment.at.toISOString()}>{shortDayWords(comment.at, style)}</time></span></p><p>{comment.text}</p></div>;
}

interface SmallFormProps { readonly action: typeof settleCommentAction; readonly id: string; readonly versionId: string; readonly commentId: string; readonly children: ReactNode }

function SmallForm({ action, id, versionId, commentId, children }: SmallFormProps) {
  return (
    <ActionForm action={action} id={id} faultsTitle="Not done">
      <FormHidden name="versionId" value={versionId} />
      <FormHidden name="commentId" value={commentId} />
      <FormSubmit kind="plain" size="small">{children}</FormSubmit>
    </ActionForm>
  );
}

interface CommentFormProps { readonly versionId: string; readonly questionId?: string; readonly replyToId?: string; /** what it is about, for those who hear the button */ readonly about: string }

/** A remark on an answer or on the whole, or a reply. Folded, so that the answers stay in view. */
export function CommentForm({ versionId, questionId, replyToId, about }: CommentFormProps) {
  const id = `comment-${replyToId ?? questionId ?? 'whole'}`;
  const name = replyToId === undefined ? 'Comment' : 'Reply';
  return (
    <details className="alt">
      <summary>{name}<span className="vh">: {about}</span></summary>
      <ActionForm action={commentAction} id={id} faultsTitle="Not written yet">
        <FormHidden name="versionId" value={versionId} />
        <FormHidden name="questionId" value={questionId ?? ''} />
        <FormHidden name="replyToId" value={replyToId ?? ''} />
        <FormText name="text" label={name} rows={3} />
        <p className="row"><FormSubmit kind="outline" size="small">Write it</FormSubmit></p>
      </ActionForm>
    </details>
  );
}
