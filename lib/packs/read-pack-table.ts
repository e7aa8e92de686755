import { readCsv, type CsvLine } from '@/lib/csv/read-csv';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { isDay } from '@/lib/forms/day-field';
import { CELL_TYPE_WORDS, LEFT_OUT_HEADS, PACK_COLUMNS, type PackColumn, SECOND_HAND_WORDS } from './csv-columns';
import { labelKey } from './pack';
import { type PackInput, PackInputSchema } from './pack-input';

/** What is wrong in one cell of one line, in words; `column` is null where it is the line as a whole. */
export interface TableFault {
  /** as a spreadsheet counts: the line of the heads is 1 */
  readonly line: number;
  readonly column: string | null;
  /** what stands in the cell */
  readonly found: string | null;
  readonly message: string;
}

export interface ReadTable {
  readonly packs: readonly { readonly line: number; readonly input: PackInput }[];
  readonly faults: readonly TableFault[];
  /** heads that nothing is known of; their columns are left out */
  readonly ignored: readonly string[];
}

/** Most lines of one table; a school has 15 to 80 packs. */
export const MOST_LINES = 400;

/**
 * Reads a table of packs: every line by the same rules as the form, every faulty cell named. Nothing is to be taken into
 * the register while there is a fault.
 * @param text comma-, semicolon- or tab-separated, the first line with heads
 * @param taken labels the school has already
 */
export function readPackTable(text: string, taken: readonly string[]): ReadTable {
  const read = readCsv(text);
  if (!read.ok) return nothing({ line: read.line, column: null, found: null, message: read.message });
  const { heads, lines } = read.table;
  if (heads.length === 0) return nothing({ line: 1, column: null, found: null, message: 'The table is empty. Its first line holds the heads' });
  const columns = heads.map((head) => PACK_COLUMNS.find((column) => isHeadOf(column, head)) ?? null);
  const faults = [...headFaults(heads, columns), ...countFaults(lines)];
  if (faults.length > 0) return { packs: [], faults, ignored: [] };
  const readLines = lines.map((line) => readLine(line, columns, heads));
  const packs = readLines.flatMap(({ pack }) => (pack === null ? [] : [pack]));
  const ignored = heads.filter((head, at) => head !== '' && columns[at] === null && !LEFT_OUT_HEADS.some((known) => same(known, head)));
  return { packs, faults: [...readLines.flatMap((line) => line.faults), ...labelFaults(packs, taken)].sort((a, b) => a.line - b.line), ignored };
}

const nothing = (fault: TableFault): ReadTable => ({ packs: [], faults: [fault], ignored: [] });
const bare = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}?]/gu, '');
const same = (one: string, other: string): boolean => bare(one) === bare(other);
const isHeadOf = (column: PackColumn, head: string): boolean => [column.head, ...column.also].some((known) => same(known, head));

function headFaults(heads: readonly string[], columns: readonly (PackColumn | null)[]): readonly TableFault[] {
  const missing = PACK_COLUMNS.filter((column) => column.needed && !columns.includes(column))
    .map(({ head }): TableFault => ({ line: 1, column: head, found: null, message: `There is no column “${head}”` }));
  const twice = heads.filter((_, at) => columns[at] !== null && columns.indexOf(columns[at] ?? null) < at)
    .map((head): TableFault => ({ line: 1, column: head, found: head, message: 'Two columns mean the same: leave one out' }));
  return [...missing, ...twice];
}

function countFaults(lines: readonly CsvLine[]): readonly TableFault[] {
  if (lines.length === 0) return [{ line: 2, column: null, found: null, message: 'There is no pack under the heads' }];
  return lines.length <= MOST_LINES ? [] : [{ line: MOST_LINES + 2, column: null, found: null, message: `At most ${MOST_LINES} packs at once` }];
}

interface LineRead { readonly pack: ReadTable['packs'][number] | null; readonly faults: readonly TableFault[] }

function readLine({ number, cells }: CsvLine, columns: readonly (PackColumn | null)[], heads: readonly string[]): LineRead {
  if (cells.slice(heads.length).some((cell) => cell !== '')) {
    return { pack: null, faults: [{ line: number, column: null, found: cells.slice(heads.length).join(' '), message: 'More cells than heads: is a comma in one of them? Put that cell in quotation marks' }] };
  }
  const typed = Object.fromEntries(columns.flatMap((column, at): [string, string][] => (column === null ? [] : [[column.field, asTyped(column, cells[at] ?? '')]])));
  const parsed = PackInputSchema.safeParse(typed);
  if (parsed.success) return { pack: { line: number, input: parsed.data }, faults: [] };
  const faults = faultsOfIssues(parsed.error.issues).map(({ field, message }): TableFault => {
    const at = columns.findIndex((column) => column !== null && column.field === field);
    const found = cells[at] ?? '';
    return { line: number, column: heads[at] ?? field, found: found === '' ? null : found, message: inTable(columns[at] ?? null, message) };
  });
  return { pack: null, faults };
}

/** Words of a table made into what the form sends. */
function asTyped({ field }: PackColumn, cell: string): string {
  if (field === 'cellType') return Object.entries(CELL_TYPE_WORDS).find(([, words]) => words.includes(cell.toLowerCase().replace(',', '.')))?.[0] ?? cell;
  if (field === 'secondHand') return Object.entries(SECOND_HAND_WORDS).find(([, words]) => (words as readonly string[]).includes(cell.toLowerCase()))?.[0] ?? cell;
  if (field === 'series') return cell.replace(/^(\d+)\s*s$/iu, '$1');
  if (field === 'boughtOn' || field === 'firstUsedOn') return dayOf(cell);
  return cell;
}

/** "25.11.2026" is the 25th everywhere; "3/4/2026" is two different days and is asked about. */
function dayOf(cell: string): string {
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(cell);
  const day = dotted === null ? cell : `${dotted[3]}-${dotted[2]?.padStart(2, '0')}-${dotted[1]?.padStart(2, '0')}`;
  return isDay(day) ? day : cell;
}

/** Where the form says "choose", a table says what may stand there. */
function inTable(column: PackColumn | null, message: string): string {
  if (column?.field === 'cellType') return `Write one of: ${Object.values(CELL_TYPE_WORDS).map(([word]) => word).join(', ')}`;
  if (column?.field === 'secondHand') return 'Write yes, no or not sure';
  return message;
}

function labelFaults(packs: ReadTable['packs'], taken: readonly string[]): readonly TableFault[] {
  const known = new Set(taken.map(labelKey));
  const first = new Map<string, number>();
  return packs.flatMap(({ line, input: { label } }): TableFault[] => {
    const key = labelKey(label);
    const before = first.get(key);
    if (before === undefined) first.set(key, line);
    if (known.has(key)) return [{ line, column: 'Label', found: label, message: 'Your register has a pack with this label already' }];
    return before === undefined ? [] : [{ line, column: 'Label', found: label, message: `Line ${before} has the same label` }];
  });
}
