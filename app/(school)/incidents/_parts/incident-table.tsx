import Link from 'next/link';
import { Table } from '@/app/_components/ui/table';
import { incidentTitle, type ListedIncident } from '@/lib/incidents/incident-list';
import { type FactNames, sayFact } from '@/lib/incidents/say-fact';
import { incidentStateWords } from '@/lib/incidents/standing';
import { momentWords } from '@/lib/wording/dates';

interface IncidentTableProps { readonly incidents: readonly ListedIncident[]; readonly names: FactNames; /** whether the reader is to act on those that are open */ readonly presses: boolean }

export function IncidentTable({ incidents, names, presses }: IncidentTableProps) {
  return (
    <Table
      stacked
      caption="Incidents, the latest first"
      rows={incidents}
      rowKey={({ id }) => id}
      presses={({ state }) => presses && state !== 'closed'}
      columns={[
        { head: 'Incident', cell: ({ id, number, facts }) => <Link href={`/incidents/${id}`} prefetch={false}>{number}: {incidentTitle(facts)}</Link> },
        { head: 'When', cell: ({ facts }) => <time dateTime={facts.when.at}>{momentWords(new Date(facts.when.at), names.dates)}</time> },
        { head: 'Where', cell: ({ facts }) => sayFact('where', facts, names) },
        { head: 'Packs', cell: ({ facts }) => sayFact('packs', facts, names) },
        { head: 'State', cell: ({ state }) => incidentStateWords(state) },
      ]}
    />
  );
}
