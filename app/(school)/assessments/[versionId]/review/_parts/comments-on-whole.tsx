import { Section } from '@/app/_components/ui/section';
import type { ReviewView } from '@/lib/server/signing/review-view';
import { CommentForm, Threads } from './comments';

/** What belongs to no single answer. */
export function CommentsOnWhole({ review: { threads, view }, actorId }: { readonly review: ReviewView; readonly actorId: string }) {
  if (threads.length === 0 && !view.may.comment) return null;
  return (
    <Section id="comments" title="On the whole" aside={threads.length === 0 ? undefined : String(threads.length)}>
      <div className="notch alone">
        <Threads threads={threads} versionId={view.version.id} actorId={actorId} mayComment={view.may.comment} style={view.school} />
        {view.may.comment ? <CommentForm versionId={view.version.id} about="the whole assessment" /> : null}
      </div>
    </Section>
  );
}
