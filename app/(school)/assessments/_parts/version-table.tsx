import Link from 'next/link';
import { Table } from '@/app/_components/ui/table';
import { type ListedVersion, stateInFull } from '@/lib/server/assessments/list';

/** Versions with their state; what somebody has to act on has a bar at its edge. */
export function VersionTable({ rows }: { readonly rows: readonly ListedVersion[] }) {
  return (
    <Table
      stacked
      caption="Assessments"
      columns={[
        { head: 'Title', cell: (row) => <Link href={`/assessments/${row.id}`} prefetch={false}>{row.title}</Link> },
        { head: 'State', cell: stateInFull },
        { head: 'Place', cell: (row) => row.siteName },
        { head: 'Season', cell: (row) => row.season },
        { head: 'Version', cell: (row) => row.number, numeric: true },
        { head: 'Prepared by', cell: (row) => row.preparedByName },
      ]}
      rows={rows}
      rowKey={(row) => row.id}
      presses={(row) => row.state === 'returned' || row.suspended || row.reviewAsked}
    />
  );
}
