import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound, redirect } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSelect, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { askedOfCaretaker, CARETAKER_DAYS } from '@/lib/assessments/caretaker';
import type { Question } from '@/lib/content/model';
import { keeperQuestions } from '@/lib/questionnaire/pages';
import { requireMay } from '@/lib/server/actor';
import { openVersion } from '@/lib/server/assessments/open-version';
import { sentLinks } from '@/lib/server/assessments/send-questions';
import { sendQuestionsAction } from './actions';
import { LinkList } from './link-list';

export const metadata: Metadata = { title: 'Questions for the caretaker' };

export default async function CaretakerLinksPage({ params }: { readonly params: Promise<{ readonly versionId: string }> }) {
  const actor = await requireMay('assessment.send-questions');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  if (open.closed !== null) redirect(`/assessments/${versionId}`);
  const { version, walk } = open;
  const questions = keeperQuestions(walk.resolution.path);
  const missing = questions.filter(({ id }) => walk.resolution.missing.includes(id));
  const links = await sentLinks(actor, versionId);
  return (
    <Sheet margin={<MarginNote title="What the link shows">The name of your school and your own, the title of this assessment, the questions you tick and their answers so far. No other answer, no note, no result. Whoever has the link can answer until it ends.</MarginNote>}>
      <PageHead crumb={<Link href={`/assessments/${versionId}`} prefetch={false}><Icon name="left" />{version.title}</Link>} title="Ask the building’s caretaker" lead="Some questions are best answered by whoever looks after the building. Send them by a link; no account is needed." />
      <Section id="send" title="Make a link">
        <ActionForm action={sendQuestionsAction} id="send-form" faultsTitle="No link was made">
          <FormHidden name="versionId" value={versionId} />
          <FormLine name="forWhom" label="Who is to answer?" hint="Name and post" maxLength={100} />
          <FormTicks name="questions" legend="Questions" options={questions.map((question) => ({ value: question.id, label: question.text, hint: linesOf(question) }))} values={missing.map(({ id }) => id)} />
          <FormSelect name="days" label="The link works for" value="14" options={CARETAKER_DAYS.map((days) => ({ value: days, label: `${days} days` }))} />
          <p className="row"><FormSubmit>Make a link</FormSubmit></p>
        </ActionForm>
      </Section>
      {links.length === 0 ? null : <Section id="links" title="Links"><LinkList links={links} versionId={versionId} /></Section>}
    </Sheet>
  );
}

/** Of some questions only some lines are for the caretaker. */
function linesOf(question: Question): string | undefined {
  const asked = askedOfCaretaker(question);
  return asked === question || asked.kind !== 'ticks' ? undefined : `Only: ${asked.options.map(({ label }) => label).join('; ')}`;
}
