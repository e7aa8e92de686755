import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import { FormSegment } from '@/app/_components/form/form-segment';
import { Section } from '@/app/_components/ui/section';
import { CLOSING_POINTS } from '@/lib/sessions/check-points';
import type { Session } from '@/lib/sessions/session';
import { POINT_OPTIONS } from '../../_parts/point-options';
import { closeSessionAction } from '../actions';

/** The look round before the last one leaves. */
export function ClosePart({ session }: { readonly session: Session }) {
  return (
    <Section id="close" title="Closing check">
      <ActionForm action={closeSessionAction} id="closing" faultsTitle="Not closed yet">
        <FormHidden name="sessionId" value={session.id} />
        <FormHidden name="revision" value={String(session.revision)} />
        {CLOSING_POINTS.map(({ id, ask }) => <FormSegment key={id} name={id} legend={ask} options={POINT_OPTIONS} />)}
        <FormNumber name="peoplePresent" label="Most people in the room" unit="people" hint="Leave it empty when the number of the beginning stands" />
        <FormLine name="note" label="Note" hint="What is not so, and who sees to it" />
        <FormSubmit kind="outline">Close the session</FormSubmit>
      </ActionForm>
    </Section>
  );
}
