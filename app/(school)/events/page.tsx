import type { Metadata } from 'next';
import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { EventQuerySchema } from '@/lib/events/event-list';
import { requireMay } from '@/lib/server/actor';
import { listOfEvents } from '@/lib/server/events/read-events';
import { currentSchool } from '@/lib/server/people/current-school';
import { EventFilters } from './_parts/event-filters';
import { EventTable } from './_parts/event-table';

export const metadata: Metadata = { title: 'Events' };

export default async function EventsPage({ searchParams }: { readonly searchParams: Promise<Readonly<Record<string, unknown>>> }) {
  const actor = await requireMay('event.read');
  const [query, school, now] = [EventQuerySchema.parse(await searchParams), await currentSchool(actor), new Date()];
  const { shown, all, coming } = await listOfEvents(actor, query, now);
  const mayBegin = can(actor.role, 'event.begin');
  return (
    <Sheet marginLabel="About events" margin={<AboutEvents />}>
      <PageHead title={titleOf(all, coming)} />
      <p className="row list-tools">
        {mayBegin ? <ButtonLink href="/events/new" kind="main">Prepare an event</ButtonLink> : null}
        {all === 0 ? null : <ButtonLink href={`/events/list.csv?${new URLSearchParams(query)}`} download="events.csv">Save as CSV</ButtonLink>}
      </p>
      {all === 0 ? <NoneYet /> : <EventFilters query={query} />}
      <p className="vh" role="status">{shown.length === 1 ? 'One event shown' : `${shown.length} events shown`}</p>
      {all > 0 && shown.length === 0 ? <p>No event is like that. <Link href="/events" prefetch={false}>Show all</Link></p> : null}
      {shown.length > 0 ? <div className="list-tools"><EventTable events={shown} style={school} now={now} /></div> : null}
    </Sheet>
  );
}

function titleOf(all: number, coming: number): string {
  if (all === 0) return 'No event yet';
  if (coming === 0) return 'No event is coming up';
  return coming === 1 ? 'One event is coming up' : `${coming} events are coming up`;
}

function NoneYet() {
  return (
    <Empty level={2} title="One date, one place, one file">
      <p>When the team hosts or travels, the venue gets one signed file: who answers, what remains dangerous, which packs come, and what is done when something happens.</p>
    </Empty>
  );
}

function AboutEvents() {
  return (
    <>
      <MarginNote title="Check before it leaves">Each event is held against the signed assessment of its place, against the register of packs, and against the rules of road and air. What nobody knows does not pass.</MarginNote>
      <MarginNote title="Two signatures">Whoever prepares it signs first, then the safety officer. Nobody signs both.</MarginNote>
    </>
  );
}
