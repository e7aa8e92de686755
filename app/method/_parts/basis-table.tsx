import { Table } from '@/app/_components/ui/table';
import type { GuidanceBasis } from '@/lib/content/model';

/** What each part of a guidance text rests on. */
export function BasisTable({ title, basis }: { readonly title: string; readonly basis: readonly GuidanceBasis[] }) {
  return (
    <Table
      caption={`What “${title}” rests on`}
      columns={[
        { head: 'What', cell: (row) => row.carries },
        { head: 'Rests on', cell: (row) => (row.kind === 'published' ? row.source : row.kind) },
      ]}
      rows={basis}
      rowKey={(row) => row.carries}
    />
  );
}
