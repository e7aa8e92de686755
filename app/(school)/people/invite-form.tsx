import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { INVITATION_DAYS } from '@/lib/people/invitation';
import { inviteAction } from './actions';
import { ROLE_OPTIONS } from './role-options';

export function InviteForm() {
  return (
    <ActionForm action={inviteAction} check={{ of: 'invite' }} id="invite-form" faultsTitle="No link made yet">
      <FormLine name="forWhom" label="Who is it for?" hint="A name or a post. Only officers see it." autoComplete="off" />
      <FormLine name="email" label="Their e-mail, if you know it" hint="It stands in their form already. Nothing is sent to it." type="email" autoComplete="off" spellCheck={false} />
      <FormChoices name="role" legend="What may they do?" options={ROLE_OPTIONS} />
      <p className="small muted">The link works once, for {INVITATION_DAYS} days.</p>
      <p className="row"><FormSubmit>Make a link</FormSubmit></p>
    </ActionForm>
  );
}
