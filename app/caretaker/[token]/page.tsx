import type { Metadata } from 'next';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { FormQuestion } from '@/app/_components/questions/form-question';
import { Frame } from '@/app/_components/ui/frame';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { countOpening, openCaretakerLink } from '@/lib/server/assessments/caretaker-page';
import { answerAsCaretakerAction } from './actions';

export const metadata: Metadata = { title: 'Questions about the building', robots: { index: false, follow: false }, referrer: 'no-referrer' };

/** Questions about the building for somebody without an account: those they were sent, and nothing else. */
export default async function CaretakerPage({ params }: { readonly params: Promise<{ readonly token: string }> }) {
  const { token } = await params;
  const opened = await openCaretakerLink(token);
  if (!opened.ok) return <Frame><PageHead title="This link does not work" lead={opened.reason} /></Frame>;
  const { page } = opened;
  await countOpening(page);
  return (
    <Frame margin={<MarginNote title="Who sees it">{page.link.byName} of {page.school}, who sent you this, and the school’s safety officer. Your name is kept with your answers.</MarginNote>}>
      <PageHead
        title={`${page.link.forWhom}, ${page.asked.length === 1 ? 'one question' : `${page.asked.length} questions`} about the building`}
        lead={`${page.school} shows in writing how its drone team charges and stores packs in this building: ${page.title}. You know the building. “Not sure” is an answer too. The link works until ${page.until}.`}
      />
      <ActionForm action={answerAsCaretakerAction} id="walk" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="token" value={token} />
        <ol className="questions">{page.asked.map((asked) => <FormQuestion key={asked.question.id} asked={asked} noteLabel="Something to add" />)}</ol>
        <FormLine name="name" label="Your name" value={page.link.answeredByName?.replace(/ \(by link\)$/u, '') ?? ''} autoComplete="name" maxLength={100} />
        <div className="actions"><FormSubmit>Save my answers</FormSubmit></div>
      </ActionForm>
    </Frame>
  );
}
