import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { EventView } from '@/lib/server/events/event-view';
import { cancelAction, copyAction, reopenAction, withdrawAction } from '../actions';

/** Another like it; and the ends of this one. */
export function EndPart({ view: { event, may } }: { readonly view: EventView }) {
  if (!may.copy && !may.withdraw && !may.cancel) return null;
  return (
    <Section id="end" title="Copy, replace, withdraw">
      {may.copy ? (
        <ActionForm action={copyAction} id="copy" faultsTitle="Not copied">
          <FormHidden name="eventId" value={event.id} />
          <p className="row"><FormSubmit kind="outline">Copy this event</FormSubmit></p>
          <p className="small muted">Place, people, packs and what is agreed are copied; dates are asked, and nothing signed or accepted comes along.</p>
        </ActionForm>
      ) : null}
      {may.reopen ? (
        <Disclosure summary="Change it, and replace the file">
          <ActionForm action={reopenAction} id="reopen" faultsTitle="Not opened">
            <FormHidden name="eventId" value={event.id} />
            <p>The event can then be changed and handed over again. The file stays in force until you hand over another; then its link and its number say that it was replaced.</p>
            <p className="row"><FormSubmit kind="outline">Change it again</FormSubmit></p>
          </ActionForm>
        </Disclosure>
      ) : null}
      {may.withdraw ? (
        <Disclosure summary="Withdraw the file">
          <ActionForm action={withdrawAction} id="withdraw" faultsTitle="Not withdrawn">
            <FormHidden name="eventId" value={event.id} />
            <p>The venue’s link, the number of the file and this page say at once that it is no longer in force.</p>
            <FormText name="reason" label="Why it is withdrawn" hint="Whoever holds the file reads it" rows={2} />
            <p className="row"><FormSubmit kind="danger">Withdraw it</FormSubmit></p>
          </ActionForm>
        </Disclosure>
      ) : null}
      {may.cancel ? (
        <Disclosure summary="Call the event off">
          <ActionForm action={cancelAction} id="cancel" faultsTitle="Not called off">
            <FormHidden name="eventId" value={event.id} />
            <FormText name="reason" label="Why it is called off" rows={2} />
            <p className="row"><FormSubmit kind="danger">Call it off</FormSubmit></p>
          </ActionForm>
        </Disclosure>
      ) : null}
    </Section>
  );
}
