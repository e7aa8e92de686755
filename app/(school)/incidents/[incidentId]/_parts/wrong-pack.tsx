import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { wrongPackAction } from '../actions';

/** For the officer: another pack was meant. */
export function WrongPack({ incidentId, packId, label }: { readonly incidentId: string; readonly packId: string; readonly label: string }) {
  return (
    <Disclosure summary={`${label} was named by mistake`}>
      <ActionForm action={wrongPackAction} id={`wrong-${packId}`} faultsTitle="Nothing changed yet">
        <FormHidden name="incidentId" value={incidentId} />
        <FormHidden name="packId" value={packId} />
        <p>It leaves isolation and goes to watch: it is checked before its next charge. What was recorded stays, with your reason beside it. In any doubt, leave it isolated.</p>
        <FormLine name="insteadLabel" label="Label of the pack that was meant" hint="It is isolated at once. Empty, when no other pack was meant." autoComplete="off" />
        <FormLine name="reason" label={`How you know that it was not ${label}`} autoComplete="off" />
        <FormTicks name="sure" legend="Are you sure?" options={[{ value: 'yes', label: `${label} took no part in it and did not lie near` }]} />
        <p className="row"><FormSubmit kind="outline">Take {label} out of this incident</FormSubmit></p>
      </ActionForm>
    </Disclosure>
  );
}
