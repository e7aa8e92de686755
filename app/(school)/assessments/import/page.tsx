import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices, FormTicks } from '@/app/_components/form/form-choices';
import { FormFile, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { beginnings } from '@/lib/server/assessments/begin';
import { importAction } from './actions';

export const metadata: Metadata = { title: 'Begin from a file' };

export default async function ImportPage() {
  const actor = await requireMay('assessment.begin');
  const { sites } = await beginnings(actor);
  return (
    <Sheet margin={<MarginNote title="Which files">Documents of the form sandbucket-assessment.v1, as an assessment or the page “Try it” saves them. Nothing is taken over until the whole file is right.</MarginNote>}>
      <PageHead crumb={<Link href="/assessments" prefetch={false}><Icon name="left" />Assessments</Link>} title="Begin from a file" lead="Its answers and notes become a draft of your own, to be looked through page by page." />
      <ActionForm action={importAction} id="import" faultsTitle="Nothing was taken over">
        <FormFile name="file" label="File" accept=".json,application/json" />
        <FormChoices name="siteId" legend="Place" options={sites.map(({ id, name }) => ({ value: id, label: name }))} />
        <FormLine name="season" label="Season" hint="Such as 2026/27. May stay empty." maxLength={40} />
        <FormTicks name="without" legend="If the file holds more than answers" options={[{ value: 'yes', label: 'Take the answers and leave the rest' }]} />
        <p className="row"><FormSubmit>Begin from this file</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}
