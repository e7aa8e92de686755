import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { EventView } from '@/lib/server/events/event-view';
import { returnAction } from '../actions';

/** What the officer does when the file is not as it should be. */
export function DecisionPart({ view: { event } }: { readonly view: EventView }) {
  return (
    <Section id="decision" title="Return it">
      <ActionForm action={returnAction} id="return" faultsTitle="Not returned">
        <FormHidden name="eventId" value={event.id} />
        <FormText name="reason" label="Return it with this" hint={`${event.preparedByName} reads it`} rows={3} />
        <p className="row"><FormSubmit kind="outline">Return it to {event.preparedByName}</FormSubmit></p>
      </ActionForm>
    </Section>
  );
}
