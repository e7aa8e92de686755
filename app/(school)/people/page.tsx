import type { Metadata } from 'next';
import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { listInvitations } from '@/lib/server/people/list-invitations';
import { listPeople } from '@/lib/server/people/list-people';
import { InviteForm } from './invite-form';
import { OpenInvitations } from './open-invitations';
import { PeopleTable } from './people-table';

export const metadata: Metadata = { title: 'People' };

export default async function PeoplePage() {
  const actor = await requireMay('people.read');
  const mayInvite = can(actor.role, 'people.invite');
  const people = await listPeople(actor);
  const invitations = mayInvite ? await listInvitations(actor) : [];
  return (
    <Sheet marginLabel="About people" margin={<AboutRoles />}>
      <PageHead title={titleOf(people.filter((person) => person.isActive).length)} lead="Who works here, and what each may do." />
      <Section id="everybody" title="Everybody"><PeopleTable people={people} mayChange={can(actor.role, 'people.change')} /></Section>
      {mayInvite ? <Section id="invite" title="Invite somebody" aside="By a link that you pass on yourself"><InviteForm /></Section> : null}
      {invitations.length > 0 ? <Section id="open-invitations" title="Links that are still open"><OpenInvitations invitations={invitations} /></Section> : null}
    </Sheet>
  );
}

function titleOf(count: number): string {
  return count === 1 ? 'One person works here' : `${count} people work here`;
}

function AboutRoles() {
  return (
    <>
      <MarginNote title="What each may do">
        <ul>
          <li><b>Organiser</b>: prepares assessments, keeps packs and records incidents.</li>
          <li><b>Safety officer</b>: checks, returns and signs, and looks after people and the school’s rules.</li>
          <li><b>Event organiser</b>: makes the venue’s file for one date and place.</li>
          <li><b>Helper</b>: logs checks, sessions and incidents.</li>
        </ul>
      </MarginNote>
      <MarginNote title="When somebody leaves"><p>Close their account. What they wrote and signed stays under their name. <Link href="/account">Your own account</Link></p></MarginNote>
    </>
  );
}
