import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { beginnings } from '@/lib/server/assessments/begin';
import { beginAction, beginNextAction } from './actions';

export const metadata: Metadata = { title: 'Begin an assessment' };

interface PageProps { readonly searchParams: Promise<{ readonly site?: string | string[] }> }

export default async function NewAssessmentPage({ searchParams }: PageProps) {
  const actor = await requireMay('assessment.begin');
  const [{ sites, copies }, { site: asked }] = await Promise.all([beginnings(actor), searchParams]);
  const chosen = sites.find(({ id }) => id === asked) ?? (sites.length === 1 ? sites[0] : undefined);
  return (
    <Sheet margin={<MarginNote title="How long it takes">About 25 minutes. Every page is saved, so you can stop after any of them and go on later, also on another device.</MarginNote>}>
      <PageHead crumb={<Link href="/assessments" prefetch={false}><Icon name="left" />Assessments</Link>} title="Begin an assessment" />
      <Section id="new-place" title="Of a place">
        {sites.length === 0 ? (
          <Empty level={3} title="No place yet"><p>Describe the place first: its rooms are filled in from there and are not asked again.</p><p className="row"><ButtonLink href="/places" kind="main">Describe a place</ButtonLink></p></Empty>
        ) : (
          <ActionForm action={beginAction} id="begin" faultsTitle="Not begun yet">
            <FormChoices name="siteId" legend="Place" options={sites.map(({ id, name }) => ({ value: id, label: name }))} value={chosen?.id} />
            <FormLine name="title" label="Title" hint="What people call it, such as Room 14" maxLength={200} />
            <FormLine name="season" label="Season" hint="Such as 2026/27. May stay empty." maxLength={40} />
            <p className="row"><FormSubmit>Begin</FormSubmit></p>
          </ActionForm>
        )}
      </Section>
      {copies.length === 0 ? null : (
        <Section id="new-version" title="The next version of a signed one">
          <ActionForm action={beginNextAction} id="next" faultsTitle="Not begun yet">
            <FormChoices name="copyFromId" legend="Copy the answers of" hint="The signed version stays in force until the next is signed." options={copies.map((one) => ({ value: one.id, label: `${one.title}, version ${one.number}`, hint: `${one.siteName}${one.season === '' ? '' : `, ${one.season}`}` }))} />
            <FormLine name="season" label="Season" hint="Such as 2027/28. May stay empty." maxLength={40} />
            <p className="row"><FormSubmit kind="outline">Begin the next version</FormSubmit></p>
          </ActionForm>
        </Section>
      )}
    </Sheet>
  );
}
