import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { KEPT_MONTHS, SWEPT_AFTER_DAYS } from '@/lib/people/retention';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { retentionOf } from '@/lib/server/retention/retention';
import { changeRetentionAction } from './actions';

export const metadata: Metadata = { title: 'Data of the school' };

/** Taking the data out, and how long what names people is kept. */
export default async function DataPage() {
  const actor = await requireMay('school.export');
  const [school, kept] = await Promise.all([currentSchool(actor), retentionOf(actor)]);
  return (
    <Sheet margin={<MarginNote title="It is yours">Nothing of it is kept anywhere else. A copy of it that you take out is yours to guard.</MarginNote>}>
      <PageHead crumb={<Link href="/school" prefetch={false}><Icon name="left" />School</Link>} title="Data of the school" lead="Take it out, and say how long what names people is kept." />
      <Section id="export" title="Take everything out">
        <p>One ZIP file: every table as JSON, the lists as CSV, every paper as PDF, every photo. Passwords, keys and the secret part of links are not in it. That you took it stands in the log.</p>
        <p className="row after"><ButtonLink href="/school/export/archive.zip" download="school.zip">Save all data as ZIP</ButtonLink></p>
      </Section>
      <Section id="kept" title="How long it is kept">
        <ActionForm action={changeRetentionAction} id="retention" faultsTitle="Not saved yet. Look at this again">
          <FormHidden name="revision" value={String(school.revision)} />
          <FormNumber name="photosKeptMonths" label="Photos of incidents that are closed" unit="months" value={months(kept.photosKeptMonths)} hint={`From ${KEPT_MONTHS.least} to ${KEPT_MONTHS.most} months after they were taken in; empty: until somebody takes them away.`} />
          <FormNumber name="personsKeptMonths" label="Initials and first aid of persons in incidents that are closed" unit="months" value={months(kept.personsKeptMonths)} hint="After that only their role, and whether they were hurt, is left. Ask your school how long the law wants accident records kept." />
          <p className="row"><FormSubmit>Save</FormSubmit></p>
        </ActionForm>
      </Section>
      <Section id="by-itself" title="What goes by itself, and what stays">
        <ul className="rows">
          <li>Sign-ins that have ended go within a day; tries at a password after {SWEPT_AFTER_DAYS.signInAttempts} days.</li>
          <li>A record of an incident that somebody began and never saved goes after {SWEPT_AFTER_DAYS.incidentDrafts} days.</li>
          <li>Links to invite, to ask a caretaker or to show a paper stop working on their last day. That they were made stays.</li>
          <li><p>Somebody who left can be forgotten, on their page under <Link href="/people" prefetch={false}>People</Link>.</p></li>
          <li>What was signed, and the log, stay as they are: each entry of the log holds the one before, and a paper that loses a name is no longer the paper that was signed.</li>
        </ul>
      </Section>
    </Sheet>
  );
}

function months(value: number | null): string {
  return value === null ? '' : String(value);
}
