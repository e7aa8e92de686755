import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { forgetPersonAction } from './actions';

/** For somebody who left and asks to be forgotten. */
export function ForgetPart({ personId, name }: { readonly personId: string; readonly name: string }) {
  return (
    <Section id="forget" title="When they ask to be forgotten">
      <Disclosure summary="Remove their personal data">
        <ActionForm action={forgetPersonAction} id="forget-form" faultsTitle="Nothing removed">
          <FormHidden name="personId" value={personId} />
          <p>Name, telephone, e-mail address and password go, and beside their everyday work stands “removed person” from now on. What they signed and what the log says keeps their name: both are evidence, and neither can be changed without showing. This cannot be taken back.</p>
          <FormTicks name="sure" legend="Are you sure?" options={[{ value: 'yes', label: `Yes, remove the data of ${name}` }]} />
          <p className="row"><FormSubmit kind="danger">Remove the data, for good</FormSubmit></p>
        </ActionForm>
      </Disclosure>
    </Section>
  );
}
