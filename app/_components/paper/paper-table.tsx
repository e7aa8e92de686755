import { GradeMark } from '@/app/_components/ui/grade-mark';
import { STACKED_ROLES, type TableRoles } from '@/app/_components/ui/table';
import type { Block, Cell } from '@/lib/papers/paper';

type TableBlock = Extract<Block, { readonly kind: 'table' }>;

/** A table of a paper; what stands there when it has no row is said instead. */
export function PaperTable({ block: { caption, columns, rows, empty } }: { readonly block: TableBlock }) {
  if (rows.length === 0) return <><h4>{caption}</h4><p className="muted">{empty}</p></>;
  const isStacked = columns.length > 2;
  const roles: TableRoles = isStacked ? STACKED_ROLES : {};
  return (
    <div className="scroll" tabIndex={0} role="group" aria-label={caption}>
      <table className={isStacked ? 'stacked' : undefined} role={roles.table}>
        <caption>{caption}</caption>
        <thead role={roles.group}><tr role={roles.row}>{columns.map((column, index) => <th key={index} scope="col" role={roles.head} className={column.align === 'right' ? 'n' : undefined}>{column.head}</th>)}</tr></thead>
        <tbody role={roles.group}>
          {rows.map((row, index) => <tr key={index} role={roles.row}>{columns.map((column, at) => <td key={at} role={roles.cell} className={column.align === 'right' ? 'n' : undefined} data-head={column.head}><CellWords cell={row[at] ?? ''} /></td>)}</tr>)}
        </tbody>
      </table>
    </div>
  );
}

function CellWords({ cell }: { readonly cell: Cell }) {
  if (typeof cell === 'string') return cell;
  if ('grade' in cell) return <>{cell.grade === 'none' ? cell.word : <GradeMark grade={cell.grade} word={cell.word} />}{cell.note === undefined ? null : <span className="small muted under">{cell.note}</span>}</>;
  return <>{cell.text}{cell.under === '' ? null : <span className="small muted under">{cell.under}</span>}</>;
}
