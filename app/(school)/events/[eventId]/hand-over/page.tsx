import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ReadAndSign } from '@/app/_components/paper/read-and-sign';
import { Button, ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Field } from '@/app/_components/ui/field';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { preparedFile } from '@/lib/server/events/read-papers';
import { officersFor } from '@/lib/server/signing/officers';
import { handOverAction } from '../actions';

export const metadata: Metadata = { title: 'Hand over' };

interface PageProps { readonly params: Promise<{ readonly eventId: string }>; readonly searchParams: Promise<{ readonly officer?: string | string[] }> }

/** Who checks it; then the file itself, and the preparer's signature. */
export default async function HandOverEventPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('event.submit');
  const [{ eventId }, asked] = [await params, await searchParams];
  const view = await eventView(actor, eventId);
  if (view === null) notFound();
  const { event, may, words, open } = view;
  const head = <PageHead crumb={<Link href={`/events/${eventId}`} prefetch={false}><Icon name="left" />{event.title}</Link>} title="Read the file, then hand it over" lead="You sign it as the one who prepared it. The officer then signs the very same file, or returns it." />;
  if (!may.handOver) return <Sheet>{head}<Notice title={words.title} level={2}><p>{words.next}</p></Notice></Sheet>;
  const officers = await officersFor(actor, event.preparedById);
  const chosen = officers.find(({ value }) => value === (typeof asked.officer === 'string' ? asked.officer : event.officerId)) ?? officers[0];
  if (chosen === undefined) return <Sheet>{head}<Empty level={2} title="No officer to hand it to"><p>Nobody signs both as preparer and as officer. Ask for another safety officer to be invited to the school.</p><p className="row"><ButtonLink href="/people">People of the school</ButtonLink></p></Empty></Sheet>;
  const ready = await preparedFile(actor, view, chosen.value);
  return (
    <Sheet>
      {head}
      <Section id="who" title="Who checks it">
        <form action={`/events/${eventId}/hand-over`} className="stack fields">
          <Field id="officer" label="Safety officer" hint="Not you: nobody signs in both places">
            {(attributes) => <select {...attributes} className="select" name="officer" defaultValue={chosen.value}>{officers.map((officer) => <option key={officer.value} value={officer.value}>{officer.label}</option>)}</select>}
          </Field>
          <p className="row"><Button type="submit">Show the file with this name</Button></p>
        </form>
      </Section>
      {ready.ok ? (
        <ReadAndSign
          paper={ready.paper} label="The file as you would sign it" action={handOverAction} id="hand-over" faultsTitle="Not handed over yet"
          notice={open.length === 0 ? null : <Notice level={3} kind="act" title={open.length === 1 ? 'One line of the check is open' : `${open.length} lines of the check are open`}><p>You can hand it over all the same. {chosen.label} cannot sign it before they are mended or, where that is allowed, let stand in writing.</p></Notice>}
          carries={{ eventId, officerId: chosen.value, seen: ready.seen }}
          says={`With your password you sign that what stands above is what you know. It goes to ${chosen.label}; until it is returned, the event does not change.`}
          submit="Sign and hand over" waiting="The file is being prepared. That takes some seconds; stay on this page."
        />
      ) : <Notice level={3} kind="act" title="It cannot be handed over"><p>{ready.why}</p></Notice>}
    </Sheet>
  );
}
