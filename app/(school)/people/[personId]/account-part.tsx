import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { PersonRow } from '@/lib/server/people/list-people';
import { closeAccountAction, reopenAccountAction } from '../actions';
import { PasswordLinkForm } from './password-link-form';

/** Opening and closing what a person signs in with. What they did stays in the record either way. */
export function AccountPart({ person }: { readonly person: PersonRow }) {
  return person.isActive ? (
    <>
      <Section id="password" title="Forgotten password"><PasswordLinkForm personId={person.personId} /></Section>
      <Section id="close" title="When they leave">
        <ActionForm action={closeAccountAction} id="close-form" faultsTitle="Account not closed">
          <p>They are signed out at once and cannot sign in. What they wrote and signed stays under their name, and you can open the account again.</p>
          <FormHidden name="personId" value={person.personId} />
          <p className="row"><FormSubmit kind="outline">Close the account</FormSubmit></p>
        </ActionForm>
      </Section>
    </>
  ) : (
    <Section id="reopen" title="When they come back">
      <ActionForm action={reopenAccountAction} id="reopen-form" faultsTitle="Account not opened">
        <p>They can sign in again with their old password and in their old role.</p>
        <FormHidden name="personId" value={person.personId} />
        <p className="row"><FormSubmit>Open the account again</FormSubmit></p>
      </ActionForm>
    </Section>
  );
}
