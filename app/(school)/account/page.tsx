import type { Metadata } from 'next';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { ROLE_NAMES } from '@/lib/access/roles';
import { SHORTEST_PASSWORD } from '@/lib/people/password';
import { requireActor } from '@/lib/server/actor';
import { listSessions } from '@/lib/server/auth/sessions';
import { ownSchools } from '@/lib/server/people/choose-school';
import { currentSchool } from '@/lib/server/people/current-school';
import { changePasswordAction, chooseSchoolAction, signOutEverywhere } from './actions';
import { Sessions } from './sessions';

export const metadata: Metadata = { title: 'Your account' };

export default async function AccountPage() {
  const actor = await requireActor();
  const [school, sessions, schools] = await Promise.all([currentSchool(actor), listSessions(), ownSchools(actor)]);
  return (
    <Sheet>
      <PageHead title={actor.name} lead={`You are ${ROLE_NAMES[actor.role]} at ${school.schoolName}. What you may do is set by a safety officer.`} />
      {schools.length < 2 ? null : (
        <Section id="schools" title="Your schools">
          <ActionForm action={chooseSchoolAction} id="school-choice" faultsTitle="Nothing changed">
            <FormChoices name="schoolId" legend="Which one are you working for?" options={schools.map(({ schoolId, name }) => ({ value: schoolId, label: name }))} value={actor.schoolId} />
            <p className="row"><FormSubmit>Go on there</FormSubmit></p>
          </ActionForm>
        </Section>
      )}
      <Section id="password" title="Password">
        <ActionForm action={changePasswordAction} id="password-form" faultsTitle="Password not changed">
          <FormPassword name="currentPassword" label="Present password" autoComplete="current-password" />
          <FormPassword name="newPassword" label="New password" autoComplete="new-password" hint={`At least ${SHORTEST_PASSWORD} characters. Every other browser is signed out.`} />
          <p className="row"><FormSubmit>Change the password</FormSubmit></p>
        </ActionForm>
      </Section>
      <Section id="sessions" title="Where you are signed in"><Sessions sessions={sessions} locale={school.locale} timeZone={school.timeZone} /></Section>
      <Section id="sign-out" title="A device is lost, or not yours">
        <form action={signOutEverywhere} className="stack">
          <p>Signs you out everywhere, here too.</p>
          <p className="row"><button type="submit" className="btn">Sign out everywhere</button></p>
        </form>
      </Section>
    </Sheet>
  );
}
