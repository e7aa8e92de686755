import type { ReactNode } from 'react';
import { Table, type TableProps } from './table';

/** Something kept out of the way until asked for; printed open. */
export function Disclosure({ summary, isOpen, children }: { readonly summary: string; /** stands open from the beginning */ readonly isOpen?: boolean; readonly children: ReactNode }) {
  return (
    <details className="alt" open={isOpen}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}

/** The same figures as a chart, for those who cannot see it or want the numbers. */
export function DisclosureTable<Row>({ summary = 'As a table', ...table }: TableProps<Row> & { readonly summary?: string }) {
  return <Disclosure summary={summary}><Table {...table} /></Disclosure>;
}
