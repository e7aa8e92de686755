import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { listOfSites } from '@/lib/server/places/read-places';
import { BasicFields } from '../_parts/basic-fields';
import { beginAction } from './actions';

export const metadata: Metadata = { title: 'Prepare an event' };

export default async function NewEventPage() {
  const actor = await requireMay('event.begin');
  const [sites, school] = await Promise.all([listOfSites(actor, ''), currentSchool(actor)]);
  return (
    <Sheet margin={<MarginNote title="What follows">Packs, people, the venue and the way there are asked next, each on a page of its own. Then the check says what is still open.</MarginNote>}>
      <PageHead crumb={<Link href="/events" prefetch={false}><Icon name="left" />Events</Link>} title="Prepare an event" lead="One date, one place." />
      {sites.length === 0 ? (
        <Empty level={2} title="No place yet"><p>Describe the place first: your own hall, or the venue you travel to.</p><p className="row"><ButtonLink href="/places/new" kind="main">Describe a place</ButtonLink></p></Empty>
      ) : (
        <ActionForm action={beginAction} check={{ of: 'event', timeZone: school.timeZone }} id="event" faultsTitle="Not begun yet">
          <BasicFields sites={sites} timeZone={school.timeZone} />
          <p className="row"><FormSubmit>Begin</FormSubmit></p>
        </ActionForm>
      )}
    </Sheet>
  );
}
