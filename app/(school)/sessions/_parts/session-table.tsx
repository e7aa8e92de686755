import Link from 'next/link';
import { Table } from '@/app/_components/ui/table';
import { SESSION_STATE_WORDS, stateOfSession, totalsOf, type Session } from '@/lib/sessions/session';
import { foundWords } from '@/lib/sessions/session-list';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

export function SessionTable({ sessions, style }: { readonly sessions: readonly Session[]; readonly style: DateStyle }) {
  return (
    <Table
      stacked
      caption="Sessions, the latest first"
      columns={[
        { head: 'Began', cell: (session) => <Link href={`/sessions/${session.id}`} prefetch={false}>{momentWords(session.startedAt, style)}</Link> },
        { head: 'Place', cell: ({ siteName }) => siteName },
        { head: 'State', cell: (session) => SESSION_STATE_WORDS[stateOfSession(session)] },
        { head: 'Charges', numeric: true, cell: (session) => String(totalsOf(session).charges) },
        { head: 'Crashes', numeric: true, cell: (session) => totalsOf(session).crashes ?? '' },
        { head: 'Found', cell: foundWords },
      ]}
      rows={sessions}
      rowKey={({ id }) => id}
    />
  );
}
