import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import type { OpenInvitation } from '@/lib/server/people/list-invitations';
import { revokeInvitationAction } from './actions';
import { CopyLink } from '@/app/_components/ui/copy-link';
import { roleTitle } from './role-options';

/** Links that were made and neither used nor taken back. Passing one on is up to the officer: the program sends nothing. */
export function OpenInvitations({ invitations }: { readonly invitations: readonly OpenInvitation[] }) {
  return (
    <ul className="rows links">
      {invitations.map((invitation) => (
        <li key={invitation.id}>
          <h3>{invitation.forWhom}</h3>
          <p className="small muted">{roleTitle(invitation.role)}. Works until {invitation.until}.</p>
          <CopyLink address={invitation.address} label={`Link for ${invitation.forWhom}`} />
          <ActionForm action={revokeInvitationAction} id={`revoke-${invitation.id}`}>
            <FormHidden name="invitationId" value={invitation.id} />
            <FormSubmit kind="plain" size="small">Take the link for {invitation.forWhom} back</FormSubmit>
          </ActionForm>
        </li>
      ))}
    </ul>
  );
}
