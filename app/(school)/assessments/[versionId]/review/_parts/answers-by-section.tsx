import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { ReviewedAnswer, ReviewView, ShownAnswers } from '@/lib/server/signing/review-view';
import { lookAction } from '../actions';
import { CommentForm, Threads } from './comments';

interface AnswersProps { readonly review: ReviewView; readonly actorId: string; readonly shown: ShownAnswers }

/** Answers as an officer reads them: what was said, what stood there before, and what was asked about it. */
export function AnswersBySection({ review, actorId, shown }: AnswersProps) {
  const { sections, mayLook, view: { version } } = review;
  if (sections.length === 0) return <p className="after">{shown === 'all' ? 'Nothing is answered yet.' : 'No answer is like that.'}</p>;
  return sections.map((section) => {
    const unseen = section.answers.filter((answer) => !answer.seen && answer.words !== '').map(({ question }) => question.id);
    return (
      <Section key={section.id} id={`section-${section.id}`} title={section.title} aside={section.answers.length === 1 ? 'one answer' : `${section.answers.length} answers`}>
        {section.answers.map((answer) => <Answer key={answer.question.id} answer={answer} review={review} actorId={actorId} />)}
        {!mayLook || unseen.length === 0 ? null : (
          <ActionForm action={lookAction} id={`look-${section.id}`}>
            <FormHidden name="versionId" value={version.id} />
            {unseen.map((id) => <FormHidden key={id} name="questions" value={id} />)}
            <p className="row"><FormSubmit kind="outline" size="small">I have looked at these {unseen.length === 1 ? 'one' : unseen.length}<span className="vh">: {section.title}</span></FormSubmit></p>
          </ActionForm>
        )}
      </Section>
    );
  });
}

function Answer({ answer, review: { view, mayLook }, actorId }: { readonly answer: ReviewedAnswer; readonly review: ReviewView; readonly actorId: string }) {
  const { question, words, note, byName, before, waitsFor, threads, seen } = answer;
  const notes = [byName === '' || words === '' ? '' : byName, waitsFor === '' ? '' : `waits for ${waitsFor}`, mayLook && seen ? 'looked at' : ''].filter((part) => part !== '');
  return (
    <div className="reviewed" id={`answer-${question.id}`}>
      <div className="stack">
        <h3 className="muted">{question.text}</h3>
        <p className="said">{words === '' ? 'Not answered. Counts as not sure.' : words}</p>
        {before === null ? null : <p className="small was">Before: {before === '' ? 'not answered' : before}</p>}
        {note === '' ? null : <p>“{note}”</p>}
        {notes.length === 0 ? null : <p className="small muted">{notes.join(', ')}</p>}
      </div>
      <div className="notch">
        <Threads threads={threads} versionId={view.version.id} actorId={actorId} mayComment={view.may.comment} style={view.school} />
        {view.may.comment ? <CommentForm versionId={view.version.id} questionId={question.id} about={question.text} /> : null}
        {threads.length === 0 && !view.may.comment ? <p className="small muted">No comment</p> : null}
      </div>
    </div>
  );
}
