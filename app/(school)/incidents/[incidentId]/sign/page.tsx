import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ReadAndSign } from '@/app/_components/paper/read-and-sign';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
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
      <ReadAndSign
        paper={paper} label="The paper as you would sign it" action={signIncidentAction} id="sign-incident" carries={{ incidentId: incident.id, seen }}
        agree={`I have read the paper of incident ${incident.number}, and it is true as far as I know`} waiting="The paper is being made and signed."
      />
    </Sheet>
  );
}
