import Papa from 'papaparse';

/** A cell of a table on its way out: text, a number, or nothing. */
export type CsvCell = string | number | null;

export interface CsvColumn<Row> {
  /** plain words, unit included */
  readonly head: string;
  readonly cell: (row: Row) => CsvCell;
}

/**
 * A text that a spreadsheet would run as a formula: it begins with one of these, also after blanks or as a wide letter.
 * Source: common practice for CSV injection, no source.
 */
const FORMULA = /^\s*[=+\-@\t\r\n|＝＋－＠]/u;
/** Tells a spreadsheet that the file is UTF-8. */
const BYTE_ORDER_MARK = '\uFEFF';

/**
 * Returns a table as comma-separated text (RFC 4180) with a byte order mark, so that a spreadsheet opens it by double
 * click. Texts that would run as a formula get an apostrophe in front; numbers are written with a point, as they are.
 */
export function writeCsv<Row>(columns: readonly CsvColumn<Row>[], rows: readonly Row[]): string {
  const data = rows.map((row) => columns.map((column) => column.cell(row) ?? ''));
  const fields = columns.map((column) => column.head);
  return BYTE_ORDER_MARK + Papa.unparse({ fields, data }, { escapeFormulae: FORMULA, newline: '\r\n' });
}

/** Returns a text as it was before `writeCsv` put an apostrophe in front of it. */
export function withoutApostrophe(text: string): string {
  return text.startsWith("'") && FORMULA.test(text.slice(1)) ? text.slice(1) : text;
}
