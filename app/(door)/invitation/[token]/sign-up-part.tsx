import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { ROLE_NAMES } from '@/lib/access/roles';
import { invitationPath } from '@/lib/people/invitation';
import { SHORTEST_PASSWORD } from '@/lib/people/password';
import type { OpenedLink } from '@/lib/server/people/accept';
import { acceptAction } from './actions';

/** Makes the account, or leads to the sign-in and back for whoever has one. */
export function SignUpPart({ token, opened }: { readonly token: string; readonly opened: OpenedLink }) {
  return (
    <>
      <PageHead title={`Join ${opened.school}`} lead={`You are invited as ${ROLE_NAMES[opened.invitation.role]}.`}>
        <div className="actions"><ButtonLink href={`/sign-in?then=${encodeURIComponent(invitationPath(token))}`}>I have an account: sign in</ButtonLink></div>
      </PageHead>
      <ActionForm action={acceptAction} check={{ of: 'sign-up' }} faultsTitle="No account made yet">
        <FormHidden name="token" value={token} />
        <FormLine name="name" label="Your name" autoComplete="name" />
        <FormLine name="post" label="Your post" hint="As it should stand under your signature, such as teacher or coach." autoComplete="organization-title" />
        <FormLine name="email" label="Your e-mail" hint="You sign in with it. Nothing is sent to it." type="email" autoComplete="username" spellCheck={false} value={opened.invitation.email ?? undefined} />
        <FormPassword name="password" label="A password" autoComplete="new-password" hint={`At least ${SHORTEST_PASSWORD} characters. Four or five unrelated words are easy to keep.`} />
        <p className="row"><FormSubmit>Make the account</FormSubmit></p>
      </ActionForm>
    </>
  );
}
