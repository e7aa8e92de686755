import type { Metadata } from 'next';
import { headers } from 'next/headers';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormLine, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { EmergencyFields, SchoolNameFields, WritingFields } from '@/app/_components/school/school-fields';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { SHORTEST_PASSWORD } from '@/lib/people/password';
import { schoolDefaults } from '@/lib/people/school-defaults';
import { isSchoolThere } from '@/lib/server/people/is-school-there';
import { asksForSetupCode } from '@/lib/server/people/setup-code';
import { beginAction } from './actions';

export const metadata: Metadata = { title: 'Make your school' };

export default async function BeginPage() {
  if (await isSchoolThere()) redirect('/sign-in');
  const values = { ...schoolDefaults((await headers()).get('accept-language')), timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone };
  return (
    <>
      <PageHead title="Make your school" lead="About five minutes. Everything here can be changed later. Nothing is kept until you press the button at the end." />
      <p className="door-verify">Have you been handed a report? <Link href="/verify" prefetch={false}>Verify the paper</Link>. It needs no account.</p>
      <ActionForm action={beginAction} check={{ of: 'school-begin' }} faultsTitle="Nothing is kept yet. Look at this again">
        {asksForSetupCode() ? <FormLine name="setupCode" label="Code" hint="It was printed where the program was started." autoComplete="off" spellCheck={false} /> : null}
        <Section id="the-school" title="The school"><div className="stack fields"><SchoolNameFields values={values} /></div></Section>
        <Section id="in-an-emergency" title="In an emergency"><div className="stack fields"><EmergencyFields values={values} /></div></Section>
        <Section id="writing" title="Measuring and printing"><div className="stack fields"><WritingFields values={values} /></div></Section>
        <Section id="the-officer" title="The first safety officer">
          <div className="stack fields">
            <p>The officer checks and signs what organisers prepare, and invites the others. Nobody signs their own work, so a second person is needed before anything is signed.</p>
            <FormLine name="name" label="Your name" autoComplete="name" />
            <FormLine name="post" label="Your post" hint="As it should stand under your signature, such as deputy head." autoComplete="organization-title" />
            <FormLine name="email" label="Your e-mail" type="email" autoComplete="username" spellCheck={false} />
            <FormPassword name="password" label="A password" autoComplete="new-password" hint={`At least ${SHORTEST_PASSWORD} characters. Four or five unrelated words are easy to keep.`} />
          </div>
        </Section>
        <p className="row"><FormSubmit>Make the school</FormSubmit></p>
      </ActionForm>
    </>
  );
}
