import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound, redirect } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { knownAnswers } from '@/lib/server/assessments/known';
import { openVersion } from '@/lib/server/assessments/open-version';
import { confirmKnownAction } from './actions';

export const metadata: Metadata = { title: 'What is known already' };

/** What the registers of places and packs know, on one page: looked at and confirmed, not asked again. */
export default async function KnownPage({ params }: { readonly params: Promise<{ readonly versionId: string }> }) {
  const actor = await requireMay('assessment.read');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  const known = open.closed === null ? await knownAnswers(actor, open) : [];
  if (known.length === 0) redirect(`/assessments/${versionId}/walk`);
  const all = known.map(({ questionId }) => questionId);
  return (
    <Sheet margin={<MarginNote title="Where it comes from">From what your school wrote down about this place and its packs. Change it there and the assessment says that the two differ.</MarginNote>}>
      <PageHead
        crumb={<><Link href={`/assessments/${versionId}`} prefetch={false}><Icon name="left" />Leave</Link><span>{open.version.title}</span></>}
        title="This is known already. Is it still right?"
        lead="What you leave ticked is taken over as your answer. What you untick is asked."
      />
      <div className="known">
        <ActionForm action={confirmKnownAction} id="known" faultsTitle="Nothing is saved yet">
          <FormHidden name="versionId" value={versionId} />
          <FormTicks name="right" legend="Still right" options={known.map(({ questionId, question, words, where }) => ({ value: questionId, label: question, hint: `${words} (${where})` }))} values={all} />
          <div className="actions"><FormSubmit>Save and go on</FormSubmit></div>
        </ActionForm>
      </div>
    </Sheet>
  );
}
