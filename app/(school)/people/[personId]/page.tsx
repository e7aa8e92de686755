import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { findPerson, type PersonRow } from '@/lib/server/people/list-people';
import { changeRoleAction } from '../actions';
import { roleTitle, ROLE_OPTIONS } from '../role-options';
import { AccountPart } from './account-part';
import { ForgetPart } from './forget-part';

export const metadata: Metadata = { title: 'Person' };

export default async function PersonPage({ params }: { readonly params: Promise<{ readonly personId: string }> }) {
  const actor = await requireMay('people.change');
  const person = await findPerson(actor, (await params).personId);
  if (!person) notFound();
  return (
    <Sheet>
      <PageHead crumb={<Link href="/people" prefetch={false}><Icon name="left" />People</Link>} title={person.name} lead={leadOf(person)} />
      {person.isActive ? <RolePart person={person} /> : null}
      <AccountPart person={person} />
      {person.isActive ? null : <ForgetPart personId={person.personId} name={person.name} />}
    </Sheet>
  );
}

function leadOf(person: PersonRow): string {
  const what = `${roleTitle(person.role)}, ${person.post}.`;
  return person.isActive ? `${what} Signs in as ${person.email}.` : `${what} The account is closed since ${person.closedOn ?? ''}.`;
}

function RolePart({ person }: { readonly person: PersonRow }) {
  return (
    <Section id="role" title="Role">
      <ActionForm action={changeRoleAction} id="role-form" faultsTitle="Role not changed">
        <FormHidden name="personId" value={person.personId} />
        <FormChoices name="role" legend="What may they do?" options={ROLE_OPTIONS} value={person.role} />
        <p className="row"><FormSubmit>Change the role</FormSubmit></p>
      </ActionForm>
    </Section>
  );
}
