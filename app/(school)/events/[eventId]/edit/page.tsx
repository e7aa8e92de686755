import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { listOfSites } from '@/lib/server/places/read-places';
import { BasicFields } from '../../_parts/basic-fields';
import { EditFrame } from '../_parts/edit-frame';
import { saveBasicsAction } from '../actions';

export const metadata: Metadata = { title: 'What, where, when' };

export default async function EditEventPage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.change');
  const [view, sites] = await Promise.all([eventView(actor, (await params).eventId), listOfSites(actor, '')]);
  if (view === null) notFound();
  const { event, school } = view;
  return (
    <EditFrame view={view} title="What, where, when">
      <ActionForm action={saveBasicsAction} check={{ of: 'event-change', timeZone: school.timeZone }} id="event" faultsTitle="Not saved yet">
        <FormHidden name="eventId" value={event.id} />
        <FormHidden name="revision" value={String(event.revision)} />
        <BasicFields sites={sites} timeZone={school.timeZone} event={event} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </EditFrame>
  );
}
