import Papa from 'papaparse';
import { withoutApostrophe } from './write-csv';

/** One line of a table with its number in the file, the line of the heads being counted. */
export interface CsvLine {
  readonly number: number;
  readonly cells: readonly string[];
}

export interface CsvTable {
  readonly heads: readonly string[];
  /** lines that hold something */
  readonly lines: readonly CsvLine[];
}

/** Separators people's spreadsheets use; which one is found out from the text. */
const SEPARATORS = [',', ';', '\t'];

/**
 * Reads a table from comma-, semicolon- or tab-separated text, as spreadsheets write or copy it. Blanks around cells, a
 * byte order mark, empty lines and the apostrophe of `writeCsv` are dropped.
 * @returns the table, or what is wrong with its quotation marks, in words; empty text gives a table without heads
 */
export function readCsv(text: string): { readonly ok: true; readonly table: CsvTable } | { readonly ok: false; readonly line: number; readonly message: string } {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/u, ''), { delimitersToGuess: SEPARATORS });
  const quotes = errors.find(({ type }) => type === 'Quotes');
  if (quotes !== undefined) return { ok: false, line: (quotes.row ?? 0) + 1, message: 'A quotation mark is opened and not closed' };
  const lines = data.map((cells, at): CsvLine => ({ number: at + 1, cells: cells.map((cell) => withoutApostrophe(cell.trim())) }));
  const [first, ...rest] = lines.filter(({ cells }) => cells.some((cell) => cell !== ''));
  return { ok: true, table: { heads: first?.cells ?? [], lines: rest } };
}
