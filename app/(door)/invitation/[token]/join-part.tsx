import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { ROLE_NAMES } from '@/lib/access/roles';
import type { Actor } from '@/lib/server/actor';
import type { OpenedLink } from '@/lib/server/people/accept';
import { placesBefore } from '@/lib/server/people/join';
import { joinAction, signOutAction } from './actions';

interface JoinPartProps { readonly token: string; readonly opened: OpenedLink; readonly actor: Actor }

/** For somebody who is signed in: joins with one press, or lets somebody else use the link in this browser. */
export async function JoinPart({ token, opened: { invitation, school }, actor }: JoinPartProps) {
  const { now, there } = await placesBefore(actor, invitation.schoolId);
  const who = `You are signed in as ${actor.name}.`;
  return (
    <>
      {there ? (
        <PageHead title={`You work at ${school} already`} lead={`${who} Nothing is changed. The link still works for somebody else.`}>
          <div className="actions"><ButtonLink kind="main" href="/today">Go on to Today</ButtonLink></div>
        </PageHead>
      ) : (
        <>
          <PageHead title={`Join ${school}`} lead={`${who} Join ${school} as ${ROLE_NAMES[invitation.role]}.`} />
          <ActionForm action={joinAction} id="join" faultsTitle="Not joined">
            <FormHidden name="token" value={token} />
            <FormLine name="post" label="Your post there" hint="As it should stand under your signature." autoComplete="organization-title" value={now?.post} />
            <p className="small muted">You sign in as before. People of {school} see your name and your e-mail.{now === null ? '' : ` What belongs to ${now.name} stays there.`} Under “Your account” you choose which school you work for.</p>
            <p className="row"><FormSubmit>Join {school}</FormSubmit></p>
          </ActionForm>
        </>
      )}
      <Section id="somebody-else" title="Is the link for somebody else at this device?">
        <ActionForm action={signOutAction} id="sign-out">
          <FormHidden name="token" value={token} />
          <p className="row"><FormSubmit kind="outline">Sign out and use it as somebody else</FormSubmit></p>
        </ActionForm>
      </Section>
    </>
  );
}
