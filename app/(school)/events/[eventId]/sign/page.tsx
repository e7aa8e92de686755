import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ReadAndSign } from '@/app/_components/paper/read-and-sign';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { waitingFile } from '@/lib/server/events/read-papers';
import { signAction } from '../actions';

export const metadata: Metadata = { title: 'Sign' };

/** The officer reads the very file that the preparer signed, and signs it. */
export default async function SignEventPage({ params }: { readonly params: Promise<{ readonly eventId: string }> }) {
  const actor = await requireMay('event.sign-as-officer');
  const { eventId } = await params;
  const view = await eventView(actor, eventId);
  if (view === null) notFound();
  const { event, may, words } = view;
  const head = <PageHead crumb={<Link href={`/events/${eventId}`} prefetch={false}><Icon name="left" />{event.title}</Link>} title="Read the file, then sign it" lead={`${event.preparedByName} has signed it. With your signature it is the venue’s file.`} />;
  const waiting = may.sign ? await waitingFile(actor, eventId) : null;
  if (waiting === null) return <Sheet>{head}<Notice title={words.title} kind={words.kind} level={2}><p>{words.next}</p></Notice></Sheet>;
  return (
    <Sheet>
      {head}
      <ReadAndSign
        paper={waiting.paper} label="The file as you would sign it" file={{ href: `/events/${eventId}/papers/event/file?number=${waiting.number}`, number: waiting.number }}
        action={signAction} id="sign-off" carries={{ eventId, documentId: waiting.id }}
        agree={`I have read file ${waiting.number}, and agree to it as it is`}
        instead={<Link href={`/events/${eventId}#decision`} prefetch={false}>Return it instead</Link>}
        waiting="The file is being signed. Stay on this page."
      />
    </Sheet>
  );
}
