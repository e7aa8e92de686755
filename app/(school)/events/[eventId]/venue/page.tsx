import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NOT_SAID, optionsOf, VenueFields } from '@/app/_components/events/venue-fields';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices, FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormSelect, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { CHARGING_THERE, DAMAGED_THERE, OVERNIGHT, TEAM_CONTROLS } from '@/lib/events/choices';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { askedOf } from '@/lib/server/events/venue-page';
import { EditFrame } from '../_parts/edit-frame';
import { saveVenueAction } from '../actions';

export const metadata: Metadata = { title: 'At the venue' };

export default async function EventVenuePage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.change');
  const view = await eventView(actor, (await params).eventId);
  if (view === null) notFound();
  const { event, content } = view;
  const { details } = event;
  const brings = TEAM_CONTROLS.flatMap((id) => content.controls.filter((control) => control.id === id).map(({ title }) => ({ value: id, label: title })));
  return (
    <EditFrame view={view} title="At the venue" lead="Leave open what nobody knows. The venue’s own staff can say it by a link." note={{ title: 'A damaged pack', words: 'It never rides back with the team. It stays at the outdoor spot, apart, until its collection, or as the collector says.' }}>
      <ActionForm action={saveVenueAction} check={{ of: 'venue' }} id="venue" faultsTitle="Not saved yet">
        <FormHidden name="eventId" value={event.id} />
        <FormHidden name="revision" value={String(event.revision)} />
        <Section id="ours" title="What we do there">
          <div className="stack fields">
            <FormChoices name="charging" legend="Are packs charged there?" value={details.charging ?? undefined} options={optionsOf(CHARGING_THERE)} />
            <FormChoices name="damaged" legend="What becomes of a pack that is damaged there?" value={details.damaged ?? undefined} options={optionsOf(DAMAGED_THERE)} />
            <FormSelect name="night" label="Where are packs overnight?" value={details.night ?? ''} options={[NOT_SAID, ...optionsOf(OVERNIGHT)]} />
            <FormText name="nightPlace" label="Where exactly, and who has the key" rows={2} value={details.nightPlace ?? ''} />
          </div>
        </Section>
        <VenueFields details={details} asked={askedOf(event)} charging={details.charging === 'yes'} />
        <Section id="brings" title="What the team brings">
          <div className="stack fields">
            <FormTicks name="brings" legend="We bring it, or see to it" values={details.brings} options={brings} />
            <FormText name="bringsNote" label="What else we bring" rows={2} value={details.bringsNote ?? ''} />
          </div>
        </Section>
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </EditFrame>
  );
}
