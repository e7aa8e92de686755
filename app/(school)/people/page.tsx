import type { Metadata } from 'next';
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
import { ROLE_OPTIONS } from './role-options';

export const metadata: Metadata = { title: 'People' };

export default async function PeoplePage() {
  const actor = await requireMay('people.read');
  const mayInvite = can(actor.role, 'people.invite');
  const people = await listPeople(actor);
  const invitations = mayInvite ? await listInvitations(actor) : [];
  return (
    <Sheet marginLabel="About people" margin={<AboutPeople mayInvite={mayInvite} />}>
      <PageHead title={titleOf(people.filter((person) => person.isActive).length)} lead="Who works here, and what each may do." />
      <Section id="everybody" title="Everybody"><PeopleTable people={people} mayChange={can(actor.role, 'people.change')} /></Section>
      {invitations.length > 0 ? <Section id="open-invitations" title="Links that are still open"><OpenInvitations invitations={invitations} /></Section> : null}
      {mayInvite ? <Section id="invite" title="Invite somebody" aside="By a link that you pass on yourself"><InviteForm /></Section> : null}
    </Sheet>
  );
}

function titleOf(count: number): string {
  return count === 1 ? 'One person works here' : `${count} people work here`;
}

function AboutPeople({ mayInvite }: { readonly mayInvite: boolean }) {
  return (
    <>
      {mayInvite ? null : <MarginNote title="What each may do"><ul>{ROLE_OPTIONS.map((role) => <li key={role.value}><b>{role.label}</b>: {role.hint}</li>)}</ul></MarginNote>}
      <MarginNote title="When somebody leaves"><p>A safety officer closes their account. What they wrote and signed stays under their name.</p></MarginNote>
    </>
  );
}
