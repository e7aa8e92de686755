import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { EVENT_PAPERS, isEventPaperKind } from '@/lib/server/events/paper-kinds';
import { eventPaperShown } from '@/lib/server/events/read-papers';

export const metadata: Metadata = { title: 'Paper of an event' };

interface PageProps { readonly params: Promise<{ readonly eventId: string; readonly kind: string }> }

/** A paper of an event on screen, out of the same data that its file is made from. */
export default async function EventPaperPage({ params }: PageProps) {
  const actor = await requireMay('document.read');
  const { eventId, kind } = await params;
  if (!isEventPaperKind(kind)) notFound();
  const [view, shown] = [await eventView(actor, eventId), await eventPaperShown(actor, eventId, kind)];
  if (view === null || shown === null) notFound();
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/events/${eventId}#papers`} prefetch={false}><Icon name="left" />{view.event.title}</Link>} title={EVENT_PAPERS[kind].title} />
      {shown.kept ? <p className="row after"><ButtonLink href={`/events/${eventId}/papers/${kind}/file?number=${shown.paper.number}`}>The file (PDF)</ButtonLink></p> : <Notice level={2} title="As it would be made now"><p>Nothing is signed or kept yet. It changes with the event.</p></Notice>}
      {kind === 'event' ? <Notice kind={view.words.kind} title={view.words.title} level={2}><p>{view.words.next}</p></Notice> : null}
      <PaperSheet paper={shown.paper} label={EVENT_PAPERS[kind].title} />
    </Sheet>
  );
}
