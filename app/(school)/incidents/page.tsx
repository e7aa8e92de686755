import type { Metadata } from 'next';
import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { can } from '@/lib/access/can';
import { IncidentQuerySchema } from '@/lib/incidents/incident-list';
import { requireMay } from '@/lib/server/actor';
import { factNames, listOfIncidents } from '@/lib/server/incidents/read-incidents';
import { IncidentFilters } from './_parts/incident-filters';
import { IncidentTable } from './_parts/incident-table';

export const metadata: Metadata = { title: 'Incidents' };

export default async function IncidentsPage({ searchParams }: { readonly searchParams: Promise<Readonly<Record<string, unknown>>> }) {
  const actor = await requireMay('incident.read');
  const query = IncidentQuerySchema.parse(await searchParams);
  const { shown, all, open } = await listOfIncidents(actor, query);
  const mayClose = can(actor.role, 'incident.close');
  return (
    <Sheet marginLabel="About incidents" margin={<AboutIncidents />}>
      <PageHead title={titleOf(all, open)} />
      <p className="row list-tools">
        <ButtonLink href="/incidents/new" kind="main">Record an incident</ButtonLink>
        {all === 0 ? null : <ButtonLink href={`/incidents/export?${new URLSearchParams(query)}`} download="incidents.csv">Save as CSV</ButtonLink>}
      </p>
      {all === 0 ? <NoneYet /> : <IncidentFilters query={query} />}
      <p className="vh" role="status">{shown.length === 1 ? 'One incident shown' : `${shown.length} incidents shown`}</p>
      {all > 0 && shown.length === 0 ? <p>No incident is like that. <Link href="/incidents" prefetch={false}>Show all</Link></p> : null}
      {shown.length > 0 ? <div className="list-tools"><IncidentTable incidents={shown} names={await factNames(actor)} presses={mayClose} /></div> : null}
    </Sheet>
  );
}

function titleOf(all: number, open: number): string {
  if (all === 0) return 'No incident yet';
  const count = all === 1 ? 'One incident' : `${all} incidents`;
  return open === 0 ? `${count}, all closed` : `${count}, ${open} not closed`;
}

function NoneYet() {
  return (
    <Empty level={2} title="Small things count">
      <p>A pack that puffs up, a smell, a plug that sparks, something that nearly happened: record each. It takes two minutes, and it is what the next assessment learns from.</p>
    </Empty>
  );
}

function AboutIncidents() {
  return (
    <>
      <MarginNote title="In danger now?"><p><Link href="/emergency" prefetch={false}>What to do now</Link> comes first, the record after.</p></MarginNote>
      <MarginNote title="Who reads them">Organisers and safety officers read all. Others read what they recorded themselves.</MarginNote>
    </>
  );
}
