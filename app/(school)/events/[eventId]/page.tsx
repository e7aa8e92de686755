import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { type EventView, eventView } from '@/lib/server/events/event-view';
import { CheckPart } from './_parts/check-part';
import { DecisionPart } from './_parts/decision-part';
import { EndPart } from './_parts/end-part';
import { FactsPart } from './_parts/facts-part';
import { LinksPart } from './_parts/links-part';
import { PapersPart } from './_parts/papers-part';

export const metadata: Metadata = { title: 'Event' };

export default async function EventPage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.read');
  const view = await eventView(actor, (await params).eventId);
  if (view === null) notFound();
  const { event, site, when, words, may } = view;
  return (
    <Sheet marginLabel="About this event" margin={<AboutEvent view={view} />}>
      <PageHead crumb={<><Link href="/events" prefetch={false}><Icon name="left" />Events</Link><span>{site.name}</span></>} title={event.title} lead={when} />
      <div className="standing">
        <Notice kind={words.kind} title={words.title} level={2}>
          <p>{words.next}</p>
          {may.handOver || may.sign ? <p className="row">{may.handOver ? <ButtonLink kind="main" href={`/events/${event.id}/hand-over`}>Read the file and hand it over</ButtonLink> : <ButtonLink kind="main" href={`/events/${event.id}/sign`}>Read the file and sign it</ButtonLink>}</p> : null}
        </Notice>
      </div>
      <CheckPart view={view} />
      {may.decide ? <DecisionPart view={view} /> : null}
      <FactsPart view={view} />
      {may.papers ? <PapersPart view={view} /> : null}
      {may.papers ? <LinksPart view={view} /> : null}
      <EndPart view={view} />
    </Sheet>
  );
}

function AboutEvent({ view: { event, rests, may } }: { readonly view: EventView }) {
  return (
    <>
      <MarginNote title="Who prepares it">{`${event.preparedByName}. Somebody else, a safety officer, checks and signs it.`}</MarginNote>
      {rests === null ? null : <MarginNote title="Held against"><p>{may.assessment ? <Link href={`/assessments/${rests.version.id}/result`} prefetch={false}>{nameOf(rests)}</Link> : nameOf(rests)}</p></MarginNote>}
      {event.copiedFromId === null ? null : <MarginNote title="A copy"><p><Link href={`/events/${event.copiedFromId}`} prefetch={false}>Of this event</Link>. Whatever was accepted there was not copied.</p></MarginNote>}
      <MarginNote title="The check is of now">It is made anew each time the page is opened, so it also says when something has changed since the file was signed.</MarginNote>
    </>
  );
}

const nameOf = ({ version }: NonNullable<EventView['rests']>): string => `“${version.assessment.title}”, version ${version.number}`;
