import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionFields } from '@/app/_components/actions/action-fields';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { ownerChoices } from '@/lib/server/actions/read-actions';
import { openVersion } from '@/lib/server/assessments/open-version';
import { addActionAction } from './actions';
import { madeOutOf } from './made-out-of';

export const metadata: Metadata = { title: 'Make an action' };

interface PageProps {
  readonly params: Promise<{ readonly versionId: string }>;
  readonly searchParams: Promise<{ readonly control?: string | string[]; readonly stop?: string | string[] }>;
}

/** An action out of a suggestion or a stop condition, or one's own. */
export default async function NewActionPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('action.add');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  const source = madeOutOf(open.walk.content, await searchParams);
  const owners = await ownerChoices(actor);
  const back = `/assessments/${versionId}/result#${source.kind === 'stop' ? 'stops' : 'first'}`;
  return (
    <Sheet margin={source.good === '' ? undefined : <MarginNote title="What good looks like">{source.good}</MarginNote>}>
      <PageHead crumb={<><Link href={back} prefetch={false}><Icon name="left" />Result</Link><span>{open.version.title}</span></>} title="Make an action" lead={source.about} />
      <ActionForm action={addActionAction} check={{ of: 'action' }} id="add-action" faultsTitle="Not added yet">
        <FormHidden name="versionId" value={versionId} />
        <FormHidden name="controlId" value={source.kind === 'control' ? source.id : ''} />
        <FormHidden name="stopId" value={source.kind === 'stop' ? source.id : ''} />
        <ActionFields owners={owners} title={source.title} ownerId={actor.personId} />
        <p className="row"><FormSubmit>Add the action</FormSubmit><Link href={back} prefetch={false}>Leave it</Link></p>
      </ActionForm>
    </Sheet>
  );
}
