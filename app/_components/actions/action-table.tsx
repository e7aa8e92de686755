import Link from 'next/link';
import { Table } from '@/app/_components/ui/table';
import { type ActionRecord, isOverdue } from '@/lib/assessments/actions';
import { calendarDayWords, type DateStyle } from '@/lib/wording/dates';

interface ActionTableProps {
  readonly actions: readonly ActionRecord[];
  readonly today: string;
  readonly style: DateStyle;
  /** names what each belongs to, in a list of more than one thing */
  readonly withOf?: boolean;
}

/** Actions with who does them and by when; what is overdue is marked with a word and a bar. */
export function ActionTable({ actions, today, style, withOf = false }: ActionTableProps) {
  return (
    <Table
      stacked
      caption={withOf ? 'Actions, open ones first' : 'What was agreed, open ones first'}
      columns={[
        { head: 'What', cell: (action) => <><Link href={`/actions/${action.id}`} prefetch={false}>{action.title}</Link>{action.closedNote === '' ? null : <span className="small muted under">{action.closedNote}</span>}</> },
        { head: 'Who', cell: (action) => action.ownerName },
        { head: 'By', cell: (action) => calendarDayWords(action.dueOn, style) },
        { head: 'State', cell: (action) => <ActionStateWords action={action} today={today} /> },
        ...(withOf ? [{ head: 'Of', cell: (action: ActionRecord) => action.of }] : []),
      ]}
      rows={actions}
      rowKey={(action) => action.id}
      presses={(action) => isOverdue(action, today)}
    />
  );
}

export function ActionStateWords({ action, today }: { readonly action: ActionRecord; readonly today: string }) {
  return isOverdue(action, today) ? <b className="press">overdue</b> : <>{action.state}</>;
}
