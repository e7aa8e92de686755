import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { ADULT_ROWS } from '@/lib/events/adults-input';
import { ADULT_PARTS } from '@/lib/events/choices';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { EditFrame } from '../_parts/edit-frame';
import { saveAdultsAction } from '../actions';

export const metadata: Metadata = { title: 'Adults who answer' };

const PARTS = ADULT_PARTS.map(({ id, label }) => ({ value: id, label }));

export default async function EventPeoplePage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.change');
  const view = await eventView(actor, (await params).eventId);
  if (view === null) notFound();
  const { event } = view;
  return (
    <EditFrame view={view} title="Adults who answer" lead="Who can be called on the day, and for what." note={{ title: 'Adults only', words: 'Names and numbers stand on the file the venue gets. Ask each of them. No student is named here. More rows come when these are filled and saved.' }}>
      <ActionForm action={saveAdultsAction} check={{ of: 'adults' }} id="adults" faultsTitle="Not saved yet">
        <FormHidden name="eventId" value={event.id} />
        <FormHidden name="revision" value={String(event.revision)} />
        <div className="persons">
          {ADULT_ROWS.slice(0, Math.max(4, event.adults.length + 2)).map((row) => {
            const adult = event.adults[row - 1];
            return (
              <fieldset key={row} className="person">
                <legend>Adult {row}</legend>
                <FormLine name={`adult${row}Name`} label="Name" value={adult?.name} autoComplete="off" maxLength={100} />
                <FormLine name={`adult${row}Phone`} label="Telephone on the day" type="tel" value={adult?.phone ?? ''} autoComplete="off" maxLength={30} />
                <FormTicks name={`adult${row}Parts`} legend="What they do there" options={PARTS} values={adult?.parts} />
              </fieldset>
            );
          })}
        </div>
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </EditFrame>
  );
}
