import type { Metadata } from 'next';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { SHORTEST_PASSWORD } from '@/lib/people/password';
import { openPasswordLink } from '@/lib/server/people/password-links';
import { newPasswordAction } from './actions';

export const metadata: Metadata = { title: 'New password', referrer: 'no-referrer' };

export default async function NewPasswordPage({ params }: { readonly params: Promise<{ readonly token: string }> }) {
  const { token } = await params;
  const opened = await openPasswordLink(token);
  if (!opened.ok) {
    return <><PageHead title="This link does not work" lead={opened.reason} /><div className="actions"><ButtonLink href="/sign-in">Go to the sign-in</ButtonLink></div></>;
  }
  return (
    <>
      <PageHead title="Set a new password" lead={`For ${opened.member.name}. You are signed out everywhere and sign in with it afterwards.`} />
      <ActionForm action={newPasswordAction} faultsTitle="Password not set">
        <FormHidden name="token" value={token} />
        <FormPassword name="password" label="New password" autoComplete="new-password" hint={`At least ${SHORTEST_PASSWORD} characters. Four or five unrelated words are easy to keep.`} />
        <p className="row"><FormSubmit>Set the password</FormSubmit></p>
      </ActionForm>
    </>
  );
}
