import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionStateWords } from '@/app/_components/actions/action-table';
import { ActionFields } from '@/app/_components/actions/action-fields';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { type ActionView, actionView, type OwnerChoice, ownerChoices } from '@/lib/server/actions/read-actions';
import { currentSchool } from '@/lib/server/people/current-school';
import { calendarDayWords, type DateStyle, dayWords } from '@/lib/wording/dates';
import { changeActionAction, doneAction, dropAction, reopenActionAction } from './actions';
import { NoteForm } from './note-form';

export const metadata: Metadata = { title: 'Action' };

interface PageProps { readonly params: Promise<{ readonly actionId: string }> }

/** One action: what, who, by when, and what became of it. */
export default async function ActionPage({ params }: PageProps) {
  const actor = await requireMay('action.read');
  const view = await actionView(actor, (await params).actionId);
  if (view === null) notFound();
  const [school, owners] = [await currentSchool(actor), await ownerChoices(actor)];
  const { action } = view;
  return (
    <Sheet>
      <PageHead crumb={<><Link href="/actions" prefetch={false}><Icon name="left" />Actions</Link>{action.versionId === null || !can(actor.role, 'assessment.read') ? <span>{action.of}</span> : <Link href={`/assessments/${action.versionId}/result#actions`} prefetch={false}>{action.of}</Link>}</>} title={action.title} />
      <ActionFacts view={view} style={school} />
      {action.state === 'open' ? <OpenForms view={view} owners={owners} /> : <ClosedForms view={view} />}
    </Sheet>
  );
}

function ActionFacts({ view: { action, today }, style }: { readonly view: ActionView; readonly style: DateStyle }) {
  return (
    <dl className="facts">
      <div><dt>State</dt><dd><ActionStateWords action={action} today={today} /></dd></div>
      <div><dt>Who</dt><dd>{action.ownerName}</dd></div>
      <div><dt>By</dt><dd>{calendarDayWords(action.dueOn, style)}</dd></div>
      {action.details === '' ? null : <div><dt>Details</dt><dd>{action.details}</dd></div>}
      {action.closedAt === null ? null : <div><dt>{action.state === 'done' ? 'Done' : 'Dropped'}</dt><dd>{action.closedNote} <span className="small muted under">{action.closedByName}, {dayWords(action.closedAt, style)}</span></dd></div>}
    </dl>
  );
}

function OpenForms({ view: { action, mayChange, mayClose }, owners }: { readonly view: ActionView; readonly owners: readonly OwnerChoice[] }) {
  return (
    <>
      {mayClose ? (
        <Section id="close" title="Is it done?">
          <NoteForm action={doneAction} id="done" actionId={action.id} label="What was done" hint="Where somebody else can see it, such as the place, a photo’s name, an invoice" submit="It is done" />
          {action.controlId === null && action.stopId === null ? null : <p className="small muted after">The assessment itself does not change by this. While it is a draft, answer its question again; once it is signed, begin the next version.</p>}
          <Disclosure summary="Drop it instead"><NoteForm action={dropAction} id="drop" actionId={action.id} label="Why it is dropped" submit="Drop it" kind="outline" /></Disclosure>
        </Section>
      ) : null}
      {mayChange ? (
        <Section id="change" title="Change it">
          <ActionForm action={changeActionAction} check={{ of: 'action-change' }} id="change-action" faultsTitle="Not changed yet">
            <FormHidden name="actionId" value={action.id} />
            <FormHidden name="revision" value={String(action.revision)} />
            <ActionFields owners={owners} title={action.title} details={action.details} ownerId={action.ownerId ?? ''} ownerName={action.ownerId === null ? action.ownerName : ''} dueOn={action.dueOn} />
            <p className="row"><FormSubmit kind="outline">Save the change</FormSubmit></p>
          </ActionForm>
        </Section>
      ) : null}
    </>
  );
}

function ClosedForms({ view: { action, mayClose } }: { readonly view: ActionView }) {
  if (!mayClose) return null;
  return <Section id="open" title="Not done after all?"><NoteForm action={reopenActionAction} id="reopen" actionId={action.id} label="Why it is open again" submit="Open it again" kind="outline" /></Section>;
}
