import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { currentActor } from '@/lib/server/actor';
import { ownPath } from '@/lib/server/own-path';
import { isSchoolThere } from '@/lib/server/people/is-school-there';
import { signInAction } from './actions';

export const metadata: Metadata = { title: 'Sign in' };

interface SignInPageProps {
  readonly searchParams: Promise<{ readonly then?: string; readonly out?: string; readonly new?: string }>;
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { then, out, new: fresh } = await searchParams;
  if (!(await isSchoolThere())) redirect('/begin');
  if (await currentActor()) redirect(ownPath(then));
  return (
    <>
      <PageHead title="Sign in" />
      <p className="door-verify">Have you been handed a report? <Link href="/verify" prefetch={false}>Verify the paper</Link>. It needs no account.</p>
      {out === undefined ? null : <Notice level={2} kind="done" title="You are signed out." />}
      {fresh === undefined ? null : <Notice level={2} kind="done" title="The new password is set. Sign in with it." />}
      <ActionForm action={signInAction} faultsTitle="Not signed in">
        <FormHidden name="then" value={ownPath(then)} />
        <FormLine name="email" label="E-mail" type="email" autoComplete="username" spellCheck={false} />
        <FormPassword name="password" label="Password" autoComplete="current-password" />
        <p className="row"><FormSubmit>Sign in</FormSubmit></p>
      </ActionForm>
      <div className="after">
        <Disclosure summary="Forgotten it, or no account yet?">
          <p>Ask your safety officer for a link. It lets you set a new password, or make your account. The program sends no e-mail of its own.</p>
        </Disclosure>
      </div>
    </>
  );
}
