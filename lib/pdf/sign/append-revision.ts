import { createHash } from 'node:crypto';
import { latin1Bytes } from '../structure/characters';
import type { PdfDocument } from '../structure/document';
import { isA, withEntries, type PdfRef, type PdfValue } from '../structure/objects';
import { joined, writeValue } from '../structure/write';

/** An object to be added, or one to take the place of the object with its number: a value, or bytes as they are to stand. */
export interface AddedObject { readonly ref: PdfRef; readonly body: PdfValue | Uint8Array }

export interface Appended {
  readonly bytes: Uint8Array;
  /** where the body of each object begins */
  bodyOffset(ref: PdfRef): number;
}

/**
 * Adds a revision to the end of a file and leaves all bytes before it as they are (ISO 32000-2, 7.5.6): the only
 * way to add a signature that keeps an earlier one.
 */
export function appendRevision(document: PdfDocument, added: readonly AddedObject[]): Appended {
  const { bytes } = document.file;
  const pieces: Uint8Array[] = [];
  const offsets = new Map<number, { readonly object: number; readonly body: number }>();
  let position = bytes.length;
  const add = (piece: Uint8Array): void => { pieces.push(piece); position += piece.length; };
  for (const { ref, body } of [...added].sort((a, b) => a.ref.number - b.ref.number)) {
    const object = position;
    add(latin1Bytes(`${ref.number} ${ref.generation} obj\n`));
    offsets.set(ref.number, { object, body: position });
    add(body instanceof Uint8Array ? body : writeValue(body));
    add(latin1Bytes('\nendobj\n'));
  }
  const table = position;
  add(latin1Bytes(crossReferences(added, (ref) => offsets.get(ref.number)?.object)));
  add(writeValue(trailerAfter(document, added, joined(pieces))));
  add(latin1Bytes(`\nstartxref\n${table}\n%%EOF\n`));
  return { bytes: joined([bytes, ...pieces]), bodyOffset: (ref) => known(offsets.get(ref.number)?.body) };
}

function trailerAfter(document: PdfDocument, added: readonly AddedObject[], addition: Uint8Array): PdfValue {
  const { trailer } = document;
  const last = document.file.revisions[document.at];
  const ids = document.resolve(trailer.entries.get('ID'));
  const first = isA(ids, 'array') ? ids.items[0] : undefined;
  // Names this revision; the same input gives the same, so that making a file can be repeated.
  const own = createHash('sha256').update(addition).digest().subarray(0, 16);
  const ownId = { kind: 'string', bytes: new Uint8Array(own), form: 'hex' } as const;
  const largest = Math.max(Number(trailer.entries.get('Size')) - 1, ...added.map(({ ref }) => ref.number));
  return withEntries(trailer, { Size: largest + 1, Prev: known(last?.offset), ID: { kind: 'array', items: [first ?? ownId, ownId] } });
}

/** One section for each unbroken run of numbers. */
function crossReferences(added: readonly AddedObject[], offsetOf: (ref: PdfRef) => number | undefined): string {
  const lines = ['xref'];
  const refs = added.map(({ ref }) => ref).sort((a, b) => a.number - b.number);
  refs.forEach((ref, index) => {
    if (refs[index - 1]?.number !== ref.number - 1) lines.push(`${ref.number} ${runLength(refs, index)}`);
    lines.push(`${String(known(offsetOf(ref))).padStart(10, '0')} ${String(ref.generation).padStart(5, '0')} n `);
  });
  return `${lines.join('\n')}\ntrailer\n`;
}

function runLength(refs: readonly PdfRef[], from: number): number {
  let length = 1;
  while (refs[from + length]?.number === known(refs[from]).number + length) length += 1;
  return length;
}

function known<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('an object that was not added');
  return value;
}
