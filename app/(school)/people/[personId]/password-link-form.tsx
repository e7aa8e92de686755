'use client';

import { use } from 'react';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormContext } from '@/app/_components/form/form-context';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { PasswordLinkSchema } from '@/lib/people/password-link';
import { CopyLink } from '@/app/_components/ui/copy-link';
import { passwordLinkAction } from './actions';

/** Makes a link by which somebody sets a new password; shown once, on the answer. */
export function PasswordLinkForm({ personId }: { readonly personId: string }) {
  return (
    <ActionForm action={passwordLinkAction} id="password-form" faultsTitle="No link made">
      <p>A link by which they set a new one themselves. Hand it to nobody else: whoever opens it first can sign in as them.</p>
      <FormHidden name="personId" value={personId} />
      <p className="row"><FormSubmit kind="outline">Make a link for a new password</FormSubmit></p>
      <MadeLink />
    </ActionForm>
  );
}

function MadeLink() {
  const made = PasswordLinkSchema.safeParse(use(FormContext).state.data);
  return made.success ? <CopyLink address={made.data.address} label="Link for a new password" /> : null;
}
