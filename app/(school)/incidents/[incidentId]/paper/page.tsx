import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { currentPaper, incidentPapers, keptIncidentPaper } from '@/lib/server/incidents/incident-paper';

export const metadata: Metadata = { title: 'The paper of an incident' };

interface PageProps { readonly params: Promise<{ readonly incidentId: string }> }

/** The signed paper of an incident on screen, out of the same data that its file was made from. */
export default async function IncidentPaperPage({ params }: PageProps) {
  const actor = await requireMay('document.read');
  const { incidentId } = await params;
  const [found, paper] = [await incidentPapers(actor, incidentId), await keptIncidentPaper(actor, incidentId)];
  if (found === null) notFound();
  const page = `/incidents/${incidentId}`;
  const maySign = can(actor.role, 'incident.sign') && found.incident.state === 'closed' && currentPaper(found) === null;
  const sign = maySign ? <p className="row"><ButtonLink kind="main" href={`${page}/sign`}>Read it and sign it</ButtonLink></p> : null;
  return (
    <Sheet>
      <PageHead crumb={<Link href={page} prefetch={false}><Icon name="left" />Incident {found.incident.number}</Link>} title="The paper" />
      {paper === null ? <Empty level={2} title="No paper yet"><p>The safety officer signs it once the incident is closed.</p>{sign}</Empty> : (
        <>
          {currentPaper(found) === null ? <Notice kind="act" title="It was opened again since" level={2}><p>This paper says what was known when it was signed. A new one is signed when the incident is closed again.</p>{sign}</Notice> : <Notice kind="done" title="Signed by the safety officer" level={2}><p>Anybody can check the file at <Link href={`/verify?number=${paper.number}`} prefetch={false}>/verify</Link>, without an account.</p></Notice>}
          <p className="row after"><ButtonLink href={`${page}/paper.pdf?number=${paper.number}`}>The file (PDF)</ButtonLink></p>
          <p className="small muted">The file is what was signed. This page shows the same for reading on a screen and for screen readers.</p>
          <PaperSheet paper={paper} label="The paper" />
        </>
      )}
    </Sheet>
  );
}
