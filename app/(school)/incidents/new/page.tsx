import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { FormPhotos } from '@/app/_components/form/form-photos';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import type { FactName } from '@/lib/incidents/facts';
import { requireMay } from '@/lib/server/actor';
import { incidentForm } from '@/lib/server/incidents/incident-form';
import { FactFields } from '../_parts/fact-fields';
import { PersonFields } from '../_parts/person-fields';
import { one } from '../_parts/typed';
import { dropDraftAction, saveIncidentAction } from './actions';
import { KeepTyped } from './keep-typed';
import { NetworkNotice } from './network-notice';
import { SaveWords } from './save-words';

export const metadata: Metadata = { title: 'Record an incident' };

const FORM = 'incident';
const FIRST: readonly FactName[] = ['called', 'hurt', 'breathed', 'kinds', 'packs', 'when', 'where', 'doing', 'whatHappened'];
const MORE: readonly FactName[] = ['firstAid', 'whatWasDone', 'contacted'];

interface NewIncidentPageProps { readonly searchParams: Promise<{ readonly empty?: string }> }

/** About two minutes on a phone: who was called and who was harmed first, the rest may stay empty. */
export default async function NewIncidentPage({ searchParams }: NewIncidentPageProps) {
  const actor = await requireMay('incident.record');
  const [form, { empty }] = [await incidentForm(actor), await searchParams];
  const fields = (names: readonly FactName[]) => names.map((name) => <FactFields key={name} name={name} typed={form.typed} choices={form} timeZone={form.timeZone} />);
  return (
    <Sheet marginLabel="Beside the form" margin={<BesideForm />}>
      <div className="walk incident-form">
        <PageHead crumb={<><Link href="/emergency" prefetch={false}><Icon name="left" />What to do now</Link><span>about two minutes</span></>} title="What happened?" />
        <div className="stack list-tools">
          <div className="notice"><p>Is anything warm, hissing, smelly or growing? Then this form waits: <Link href="/emergency/hot" prefetch={false}>everybody out, alarm, call</Link>.</p></div>
          <NetworkNotice formId={FORM} />
          {form.draftSaved === null ? null : (
            <Notice level={2} title={`Your draft of ${form.draftSaved}`}>
              <p>Nothing of it is recorded yet.</p>
              <ActionForm action={dropDraftAction} id="drop-draft"><p className="row"><FormSubmit kind="plain" size="small">Begin with an empty form</FormSubmit></p></ActionForm>
            </Notice>
          )}
        </div>
        {/* Keyed by the address alone: without a script React finds what the action answered by this key. */}
        <ActionForm key={empty ?? 'form'} action={saveIncidentAction} check={{ of: 'incident', timeZone: form.timeZone }} id={FORM} faultsTitle="Not saved yet. Look at this again">
          <FormHidden name="clientKey" value={one(form.typed, 'clientKey') ?? ''} />
          {fields(FIRST)}
          <Section id="more" title="More, when there is time">
            <div className="stack fields">
              {fields(MORE)}
              <Disclosure summary="Who was affected"><PersonFields typed={form.typed} /></Disclosure>
              <FormPhotos name="photos" label="Photos" hint="Only if you are already outside and nobody would go back for it. No faces. Where and when a photo was taken is left out of it." />
            </div>
          </Section>
          <div className="actions stick">
            <FormSubmit><SaveWords formId={FORM} /></FormSubmit>
            <FormSubmit kind="plain" name="intent" value="draft" unchecked>Keep as a draft</FormSubmit>
          </div>
          <KeepTyped formId={FORM} personId={form.personId} emptied={empty ?? null} />
        </ActionForm>
      </div>
    </Sheet>
  );
}

function BesideForm() {
  return (
    <>
      <MarginNote title="What happens when you save">
        <ol>
          <li>The packs are marked isolated in the register.</li>
          <li>The safety officer sees it. If anybody is hurt, telephone now.</li>
          <li>You are asked where each pack is.</li>
        </ol>
      </MarginNote>
      <MarginNote title="Nothing is written over">Later you can add and correct. What was said first stays, with the reason.</MarginNote>
      <MarginNote title="No names">Roles, initials and counts are enough. Medics and families get the rest, by voice.</MarginNote>
    </>
  );
}
