import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { resultView } from '@/lib/server/signing/result-view';
import { liftAction, suspendAction } from './actions';

export const metadata: Metadata = { title: 'Suspend an assessment' };

interface PageProps { readonly params: Promise<{ readonly versionId: string }> }

/** Takes a signed assessment out of force at once, or puts it back. */
export default async function SuspendPage({ params }: PageProps) {
  const actor = await requireMay('assessment.suspend');
  const { versionId } = await params;
  const view = await resultView(actor, versionId);
  if (view === null) notFound();
  const { version, standing: { suspension }, may, words } = view;
  return (
    <Sheet>
      <PageHead crumb={<><Link href={`/assessments/${versionId}/result`} prefetch={false}><Icon name="left" />Result</Link><span>{version.title}, version {version.number}</span></>} title={suspension === null ? 'Suspend this assessment' : 'Lift the suspension'} />
      <Notice kind={words.kind} title={words.title} level={2}><p>{words.next}</p></Notice>
      {may.suspend ? (
        <ActionForm action={suspendAction} id="suspend" faultsTitle="Not suspended yet">
          <p>It is out of force as soon as you send this. Everybody of the school sees it with your reason, and so does anybody who checks the file. The signed file itself stays as it is.</p>
          <FormHidden name="versionId" value={versionId} />
          <FormText name="reason" label="Reason" hint="As you would say it to the venue. No names of pupils." rows={3} />
          <p className="row"><FormSubmit kind="now">Suspend it now</FormSubmit></p>
        </ActionForm>
      ) : null}
      {may.lift ? (
        <ActionForm action={liftAction} id="lift" faultsTitle="Not lifted yet">
          <FormHidden name="versionId" value={versionId} />
          <FormText name="reason" label="What has changed" hint="Stays in the log with the suspension" rows={3} />
          <p className="row"><FormSubmit>Put it in force again</FormSubmit></p>
        </ActionForm>
      ) : null}
      {may.suspend || may.lift ? null : <p>Only a signed assessment that is in force can be suspended.</p>}
    </Sheet>
  );
}
