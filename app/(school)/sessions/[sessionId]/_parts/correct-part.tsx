import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormNumber, FormSelect, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import type { PackToLog } from '@/lib/sessions/log-packs';
import type { Session } from '@/lib/sessions/session';
import { correctLogAction } from '../actions';

/** A count said anew; what stood there before stays in the log of changes. */
export function CorrectPart({ session, register }: { readonly session: Session; readonly register: readonly PackToLog[] }) {
  return (
    <Disclosure summary="Put a count right">
      <ActionForm action={correctLogAction} id="correct" faultsTitle="Not changed">
        <FormHidden name="sessionId" value={session.id} />
        <FormHidden name="revision" value={String(session.revision)} />
        <FormSelect name="packId" label="Pack" options={[{ value: '', label: 'Choose' }, ...register.map(({ id, label }) => ({ value: id, label }))]} />
        <FormNumber name="charges" label="Charges in the session" />
        <FormNumber name="crashes" label="Crashes in the session" />
        <FormLine name="reason" label="What was wrong" />
        <FormSubmit kind="outline">Put it right</FormSubmit>
      </ActionForm>
    </Disclosure>
  );
}
