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
import { currentPaper, incidentPapers, incidentPreview } from '@/lib/server/incidents/incident-paper';
import { signIncidentAction } from './actions';

export const metadata: Metadata = { title: 'Sign an incident' };

interface PageProps { readonly params: Promise<{ readonly incidentId: string }> }

/** The officer reads the paper of a closed incident, and signs it. */
export default async function SignIncidentPage({ params }: PageProps) {
  const actor = await requireMay('incident.sign');
  const { incidentId } = await params;
  const found = await incidentPapers(actor, incidentId);
  if (found === null) notFound();
  const { incident } = found;
  const page = `/incidents/${incidentId}`;
  const head = <PageHead crumb={<Link href={page} prefetch={false}><Icon name="left" />Incident {incident.number}</Link>} title="Read the paper, then sign it" lead="You sign it as the safety officer. A copy that anybody can check is kept with the incident." />;
  if (incident.state !== 'closed') return <Sheet>{head}<Notice title="It is not closed yet" level={2}><p>Its paper is signed once it is closed: until then something of it is still open.</p><p className="row"><ButtonLink href={`${page}#close`}>Review and closing</ButtonLink></p></Notice></Sheet>;
  const kept = currentPaper(found);
  if (kept !== null) return <Sheet>{head}<Notice kind="done" title={`It is signed: ${kept.number}`} level={2}><p>Nothing has changed since. Should it be opened again and closed, a new paper takes its place.</p><p className="row"><ButtonLink href={`${page}/paper`}>Read the paper</ButtonLink></p></Notice></Sheet>;
  const { paper, seen } = await incidentPreview(actor, incident);
  return (
    <Sheet>
      {head}
      <Section id="the-paper" title="What you sign" aside={<a href="#sign">To the signature</a>}>
        <PaperSheet paper={paper} label="The paper as you would sign it" />
      </Section>
      <Section id="sign" title="Your signature">
        <ActionForm action={signIncidentAction} id="sign-incident" faultsTitle="Not signed yet">
          <FormHidden name="incidentId" value={incident.id} />
          <FormHidden name="seen" value={seen} />
          <FormTicks name="read" legend="Before you sign" options={[{ value: 'yes', label: `I have read the paper of incident ${incident.number}, and it is true as far as I know` }]} />
          <FormPassword name="password" label="Your password" hint="Asked again, because it opens the key you sign with" autoComplete="current-password" />
          <p className="row"><FormSubmit>Sign it</FormSubmit></p>
          <FormWaiting words="The paper is being made and signed." />
        </ActionForm>
      </Section>
    </Sheet>
  );
}
