import { Cursor } from './cursor';
import { isA, type PdfDict } from './objects';
import { PdfFault, expectOfFile } from './pdf-fault';
import { readValue } from './read-value';

/** One table of cross-references: where a revision says that its objects stand. */
export interface CrossReferences {
  /** offset of the word xref */
  readonly offset: number;
  /** offset and generation of each object in use, by its number */
  readonly inUse: ReadonlyMap<number, { readonly offset: number; readonly generation: number }>;
  /** numbers given up, apart from 0 */
  readonly freed: ReadonlySet<number>;
  readonly trailer: PdfDict;
  /** offset right after `%%EOF` and one end of line */
  readonly end: number;
}

const MOST_OBJECTS = 200_000;

/**
 * Reads table, trailer and end of a revision (ISO 32000-2, 7.5.4 and 7.5.5). Compressed cross-references and the
 * mixture of both kinds are refused: no file made here has them, and readers disagree about mixtures.
 */
export function readCrossReferences(bytes: Uint8Array, offset: number): CrossReferences {
  const cursor = new Cursor(bytes, offset);
  if (!cursor.isAt('xref')) throw new PdfFault('other-structure', 'the cross-references are compressed, or not where the file says');
  cursor.take('xref');
  cursor.skipWhite();
  const { inUse, freed } = readSections(cursor);
  cursor.take('trailer');
  const trailer = readValue(cursor);
  expectOfFile(isA(trailer, 'dict'), 'a trailer that is no dictionary');
  if (trailer.entries.has('XRefStm')) throw new PdfFault('other-structure', 'two kinds of cross-references in one file');
  if (trailer.entries.has('Encrypt')) throw new PdfFault('encrypted', 'the file is encrypted');
  cursor.skipWhite();
  cursor.take('startxref');
  cursor.skipWhite();
  expectOfFile(cursor.wholeNumber() === offset, 'a revision that points to another table than its own');
  // The mark of the end looks like a comment and must not be skipped as one.
  while (cursor.endOfLine()) continue;
  cursor.take('%%EOF');
  cursor.endOfLine();
  return { offset, inUse, freed, trailer, end: cursor.position };
}

function readSections(cursor: Cursor): Pick<CrossReferences, 'inUse' | 'freed'> {
  const inUse = new Map<number, { offset: number; generation: number }>();
  const freed = new Set<number>();
  while (!cursor.isAt('trailer')) {
    const first = cursor.wholeNumber();
    cursor.take(' ');
    const count = cursor.wholeNumber();
    cursor.skipWhite();
    if (first + count > MOST_OBJECTS) throw new PdfFault('too-large', 'more objects than any report has');
    for (let number = first; number < first + count; number += 1) {
      const entry = readEntry(cursor);
      expectOfFile(!inUse.has(number) && !freed.has(number), `object ${number} twice in one table`);
      if (entry.used) inUse.set(number, entry);
      else if (number > 0) freed.add(number);
    }
    cursor.skipWhite();
  }
  return { inUse, freed };
}

/** Twenty bytes: `0000000017 00000 n` and two more that end the line. */
function readEntry(cursor: Cursor): { readonly used: boolean; readonly offset: number; readonly generation: number } {
  const from = cursor.position;
  const offset = cursor.wholeNumber();
  cursor.take(' ');
  const generation = cursor.wholeNumber();
  cursor.take(' ');
  const used = cursor.isAt('n');
  cursor.take(used ? 'n' : 'f');
  if (cursor.isAt(' ')) cursor.take(' ');
  expectOfFile(cursor.endOfLine() && cursor.position === from + 20, `a line of the cross-references at ${from} that is not 20 bytes long`);
  return { used, offset, generation };
}
