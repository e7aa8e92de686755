import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { FormWaiting } from '@/app/_components/form/form-waiting';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
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
      <Section id="the-paper" title="What you sign" aside={<a href="#sign">To the signature</a>}>
        <p className="row"><ButtonLink href={`/events/${eventId}/papers/event/file?number=${waiting.number}`}>The file itself (PDF), {waiting.number}</ButtonLink></p>
        <PaperSheet paper={waiting.paper} label="The file as you would sign it" />
      </Section>
      <Section id="sign" title="Your signature">
        <ActionForm action={signAction} id="sign-off" faultsTitle="Not signed yet">
          <FormHidden name="eventId" value={eventId} />
          <FormHidden name="documentId" value={waiting.id} />
          <FormTicks name="read" legend="Before you sign" options={[{ value: 'yes', label: `I have read file ${waiting.number}, and agree to it as it is` }]} />
          <FormPassword name="password" label="Your password" hint="Asked again, because it opens the key you sign with" autoComplete="current-password" />
          <p className="row"><FormSubmit>Sign it</FormSubmit><Link href={`/events/${eventId}#decision`} prefetch={false}>Return it instead</Link></p>
          <FormWaiting words="The file is being signed. Stay on this page." />
        </ActionForm>
      </Section>
    </Sheet>
  );
}
