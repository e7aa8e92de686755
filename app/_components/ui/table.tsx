import { Fragment, type ReactNode } from 'react';

export interface Column<Row> {
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** to the right, with figures of one width */
  readonly numeric?: boolean;
}

export interface TableProps<Row> {
  /** read out before the table, and the name of its scrolling part */
  readonly caption: string;
  readonly captionShown?: boolean;
  /** the first column names the row */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  /** a row that needs a person now gets an ember bar at its left edge */
  readonly presses?: (row: Row) => boolean;
  /** a list of things in words: on a phone each row stands by itself, its cells one under the other with their heads */
  readonly stacked?: boolean;
}

export type TableRoles = Partial<typeof STACKED_ROLES>;

/** Said outright, since a browser may take a table whose rows are drawn as blocks for no table. */
export const STACKED_ROLES = { table: 'table', group: 'rowgroup', row: 'row', head: 'columnheader', name: 'rowheader', cell: 'cell' } as const;

/** A table in a part that scrolls sideways by itself and can be reached by keyboard. */
export function Table<Row>({ caption, captionShown = false, columns, rows, rowKey, presses, stacked = false }: TableProps<Row>) {
  const roles: TableRoles = stacked ? STACKED_ROLES : {};
  return (
    <div className="scroll" tabIndex={0} role="region" aria-label={caption}>
      <table className={stacked ? 'stacked' : undefined} role={roles.table}>
        <caption className={captionShown ? undefined : 'vh'}>{caption}</caption>
        <thead role={roles.group}>
          <tr role={roles.row}>{columns.map((column, index) => <th key={index} scope="col" role={roles.head} className={numberClass(column)}>{column.head}</th>)}</tr>
        </thead>
        <tbody role={roles.group}>
          {rows.map((row) => (
            <tr key={rowKey(row)} role={roles.row} className={presses?.(row) === true ? 'now' : undefined}>
              {columns.map((column, index) => <Fragment key={index}>{cell(column, row, index === 0, roles)}</Fragment>)}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function cell<Row>(column: Column<Row>, row: Row, names: boolean, roles: TableRoles): ReactNode {
  if (names) return <th scope="row" role={roles.name} className={numberClass(column)}>{column.cell(row)}</th>;
  return <td role={roles.cell} className={numberClass(column)} data-head={column.head}>{column.cell(row)}</td>;
}

function numberClass<Row>(column: Column<Row>): string | undefined {
  return column.numeric === true ? 'n' : undefined;
}
