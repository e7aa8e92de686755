import Link from 'next/link';
import { Table } from '@/app/_components/ui/table';
import { isOver, type ListedEvent } from '@/lib/events/event-list';
import { eventStateWords } from '@/lib/events/standing';
import { type DateStyle, shortDayWords } from '@/lib/wording/dates';

interface EventTableProps { readonly events: readonly ListedEvent[]; readonly style: DateStyle; readonly now: Date }

export function EventTable({ events, style, now }: EventTableProps) {
  return (
    <Table
      stacked
      caption="Events, the next first"
      rows={events}
      rowKey={({ id }) => id}
      columns={[
        { head: 'Event', cell: ({ id, title }) => <Link href={`/events/${id}`} prefetch={false}>{title}</Link> },
        { head: 'When', cell: (event) => <><time dateTime={event.startsAt.toISOString()}>{shortDayWords(event.startsAt, style)}</time>{isOver(event, now) ? <span className="under small muted">over</span> : null}</> },
        { head: 'Where', cell: ({ siteName }) => siteName },
        { head: 'Packs', numeric: true, cell: ({ packs }) => packs },
        { head: 'State', cell: ({ state }) => eventStateWords(state) },
      ]}
    />
  );
}
