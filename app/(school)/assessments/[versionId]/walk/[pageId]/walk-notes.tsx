import Link from 'next/link';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { keeperQuestions } from '@/lib/questionnaire/pages';
import type { OpenVersion } from '@/lib/server/assessments/open-version';
import type { WalkPageView } from '@/lib/server/assessments/walk-page';

/** Beside the questions: who else may know, where they come from, the other pages. */
export function WalkNotes({ open: { version, walk }, view: { page } }: { readonly open: OpenVersion; readonly view: WalkPageView }) {
  const here = `/assessments/${version.id}`;
  const forKeeper = keeperQuestions(page.questions).length;
  return (
    <>
      {forKeeper === 0 ? null : <MarginNote title="Not yours to answer?"><p>The building’s caretaker may know. <Link href={`${here}/caretaker`} prefetch={false}>Send {forKeeper === 1 ? 'the question' : `${forKeeper} questions`} by a link</Link></p></MarginNote>}
      <MarginNote title="Where these questions come from"><ul>{page.questions.map((question) => <li key={question.id}>{question.text} <span className="muted">{question.source}</span></li>)}</ul></MarginNote>
      <MarginNote title="Pages of this part">
        <ul>{walk.pages.filter(({ section }) => section === page.section).map((one) => <li key={one.id}>{one.id === page.id ? <b>{one.title}</b> : <Link href={`${here}/walk/${one.id}`} prefetch={false}>{one.title}</Link>} <span className="muted">{one.answered} of {one.questions.length}</span></li>)}</ul>
      </MarginNote>
    </>
  );
}
