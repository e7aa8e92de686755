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
}

/** A table in a part that scrolls sideways by itself and can be reached by keyboard. */
export function Table<Row>({ caption, captionShown = false, columns, rows, rowKey, presses }: TableProps<Row>) {
  return (
    <div className="scroll" tabIndex={0} role="region" aria-label={caption}>
      <table>
        <caption className={captionShown ? undefined : 'vh'}>{caption}</caption>
        <thead>
          <tr>{columns.map((column, index) => <th key={index} scope="col" className={numberClass(column)}>{column.head}</th>)}</tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)} className={presses?.(row) === true ? 'now' : undefined}>
              {columns.map((column, index) => <Fragment key={index}>{cell(column, row, index === 0)}</Fragment>)}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function cell<Row>(column: Column<Row>, row: Row, names: boolean): ReactNode {
  if (names) return <th scope="row" className={numberClass(column)}>{column.cell(row)}</th>;
  return <td className={numberClass(column)}>{column.cell(row)}</td>;
}

function numberClass<Row>(column: Column<Row>): string | undefined {
  return column.numeric === true ? 'n' : undefined;
}
