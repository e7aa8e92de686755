import { Cursor } from './cursor';
import { latin1 } from './characters';
import type { Span } from './objects';
import { PdfFault, expectOfFile } from './pdf-fault';
import { readCrossReferences, type CrossReferences } from './read-revision';

/** What was written at one time: the whole first file, or what was added to it later. */
export interface Revision extends Span, CrossReferences {}

export interface PdfFile {
  readonly bytes: Uint8Array;
  /** oldest first; never empty */
  readonly revisions: readonly Revision[];
  /** how many bytes follow the last revision that belong to nothing */
  readonly trailing: number;
}

/** No report comes near it: sixty pages are less than a megabyte, photos included a few. */
export const LARGEST_FILE = 40 * 1024 * 1024;
const MOST_REVISIONS = 16;

/**
 * Reads how a file is built: its revisions, each from where the one before it ended, each with its own table and
 * end. Strict on purpose: a check must not be more forgiving than the programs that show the file.
 * @throws PdfFault when it is no such file
 */
export function readFile(bytes: Uint8Array, largest = LARGEST_FILE): PdfFile {
  if (bytes.length === 0) throw new PdfFault('empty', 'there are no bytes');
  if (bytes.length > largest) throw new PdfFault('too-large', `more than ${largest} bytes`);
  if (!/^%PDF-[12]\.\d[\r\n]/.test(latin1(bytes.subarray(0, 9)))) throw new PdfFault('not-pdf', 'it does not begin as a PDF does');
  const tables = tablesNewestFirst(bytes).reverse();
  const revisions = tables.map((table, index): Revision => ({ ...table, start: index === 0 ? 0 : tables[index - 1]?.end ?? 0 }));
  for (const revision of revisions) expectOwnObjects(revision);
  const last = revisions.at(-1);
  expectOfFile(last !== undefined, 'a file without a revision');
  return { bytes, revisions, trailing: bytes.length - last.end };
}

/** Follows the tables from the last one back. Each must stand before the one that names it, so this ends. */
function tablesNewestFirst(bytes: Uint8Array): CrossReferences[] {
  const tables: CrossReferences[] = [];
  for (let offset: number | undefined = lastTableOffset(bytes); offset !== undefined;) {
    if (tables.length >= MOST_REVISIONS) throw new PdfFault('too-large', 'more revisions than any report has');
    const table: CrossReferences = readCrossReferences(bytes, offset);
    const later = tables.at(-1);
    tables.push(table);
    expectOfFile(later === undefined || table.end <= later.offset, 'revisions that reach into each other');
    const previous = table.trailer.entries.get('Prev');
    if (previous === undefined) break;
    expectOfFile(typeof previous === 'number' && Number.isInteger(previous) && previous > 0 && previous < offset, 'a revision that names a later one as the one before it');
    offset = previous;
  }
  return tables;
}

/** What the last `startxref` before the last `%%EOF` says, wherever bytes may have been added after it. */
function lastTableOffset(bytes: Uint8Array): number {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const mark = buffer.lastIndexOf('%%EOF');
  if (mark < 0) throw new PdfFault('truncated', 'there is no mark of the end');
  const word = buffer.lastIndexOf('startxref', mark);
  if (word < 0) throw new PdfFault('truncated', 'nothing says where the cross-references are');
  const cursor = new Cursor(bytes, word);
  cursor.take('startxref');
  cursor.skipWhite();
  const offset = cursor.wholeNumber();
  expectOfFile(offset < word, 'cross-references after their own end');
  return offset;
}

/** An object of a revision stands within it: else a later table could show old bytes as something new. */
function expectOwnObjects({ start, offset, inUse }: Revision): void {
  for (const [number, entry] of inUse) expectOfFile(entry.offset >= start && entry.offset < offset, `object ${number} stands outside of its revision`);
}
