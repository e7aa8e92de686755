import { GradeMark } from '@/app/_components/ui/grade-mark';
import type { Block, Cell } from '@/lib/papers/paper';

type TableBlock = Extract<Block, { readonly kind: 'table' }>;

/** A table of a paper; what stands there when it has no row is said instead. */
export function PaperTable({ block: { caption, columns, rows, empty } }: { readonly block: TableBlock }) {
  if (rows.length === 0) return <><h4>{caption}</h4><p className="muted">{empty}</p></>;
  return (
    <div className="scroll" tabIndex={0} role="group" aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead><tr>{columns.map((column, index) => <th key={index} scope="col" className={column.align === 'right' ? 'n' : undefined}>{column.head}</th>)}</tr></thead>
        <tbody>
          {rows.map((row, index) => <tr key={index}>{columns.map((column, at) => <td key={at} className={column.align === 'right' ? 'n' : undefined}><CellWords cell={row[at] ?? ''} /></td>)}</tr>)}
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
