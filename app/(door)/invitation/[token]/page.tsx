import type { Metadata } from 'next';
import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { currentActor } from '@/lib/server/actor';
import { openInvitation } from '@/lib/server/people/accept';
import { JoinPart } from './join-part';
import { SignUpPart } from './sign-up-part';

export const metadata: Metadata = { title: 'Invitation', referrer: 'no-referrer' };

/** A link of a school: for somebody new, who makes an account, and for somebody who has one. */
export default async function InvitationPage({ params }: { readonly params: Promise<{ readonly token: string }> }) {
  const { token } = await params;
  const [opened, actor] = await Promise.all([openInvitation(token), currentActor()]);
  if (!opened.ok) {
    const on = actor === null ? <ButtonLink href="/sign-in">Go to the sign-in</ButtonLink> : <ButtonLink href="/today">Go on to Today</ButtonLink>;
    return <><PageHead title="This link does not work" lead={opened.reason} /><div className="actions">{on}</div></>;
  }
  return actor === null ? <SignUpPart token={token} opened={opened} /> : <JoinPart token={token} opened={opened} actor={actor} />;
}
