import { isA, type IndirectObject, type PdfDict, type PdfRef, type PdfValue } from './objects';
import { expectOfFile } from './pdf-fault';
import type { PdfFile, Revision } from './read-file';
import { readIndirectObject } from './read-object';

/** A file as it stood after one of its revisions. */
export interface PdfDocument {
  readonly file: PdfFile;
  /** which revision it is seen at, counted from 0 */
  readonly at: number;
  readonly trailer: PdfDict;
  /** the object of a number, as the newest revision up to this one has it; undefined where there is none */
  object(number: number): IndirectObject | undefined;
  /** the revision that an object of this document comes from, counted from 0 */
  originOf(number: number): number | undefined;
  /** what a reference leads to; any other value is returned as it is. A reference to nothing is null, as the format has it. */
  resolve(value: PdfValue | undefined): PdfValue | undefined;
}

/** Opens a file at a revision, the last one unless told. Objects are read when they are asked for, once. */
export function openDocument(file: PdfFile, at = file.revisions.length - 1): PdfDocument {
  const revisions = file.revisions.slice(0, at + 1);
  const last = revisions.at(-1);
  if (last === undefined || at >= file.revisions.length) throw new Error(`there is no revision ${at}`);
  const read = new Map<number, IndirectObject>();
  const originOf = (number: number) => newestWith(revisions, number);

  const object = (number: number): IndirectObject | undefined => {
    const known = read.get(number);
    if (known !== undefined) return known;
    const origin = originOf(number);
    const revision = origin === undefined ? undefined : revisions[origin];
    const entry = revision?.inUse.get(number);
    if (revision === undefined || entry === undefined) return undefined;
    const found = readIndirectObject(file.bytes, entry.offset, revision.offset, lengthOf);
    expectOfFile(found.ref.number === number && found.ref.generation === entry.generation, `at the place of object ${number} stands another`);
    read.set(number, found);
    return found;
  };
  const lengthOf = (ref: PdfRef): number => {
    const value = read.get(ref.number)?.value ?? plainNumber(file, revisions, ref);
    expectOfFile(typeof value === 'number', 'a length that is no number');
    return value;
  };
  const resolve = (value: PdfValue | undefined): PdfValue | undefined => {
    let found = value;
    for (let steps = 0; isA(found, 'ref'); steps += 1) {
      expectOfFile(steps < 8, 'references in a circle');
      found = followed(object(found.number), found);
    }
    return found;
  };
  return { file, at, trailer: last.trailer, object, originOf, resolve };
}

/** A reference of another generation than the object's leads to nothing (ISO 32000-2, 7.3.10). */
function followed(object: IndirectObject | undefined, ref: PdfRef): PdfValue {
  return object !== undefined && object.ref.generation === ref.generation ? object.value : null;
}

function newestWith(revisions: readonly Revision[], number: number): number | undefined {
  for (let index = revisions.length - 1; index >= 0; index -= 1) {
    if (revisions[index]?.inUse.has(number) === true) return index;
    if (revisions[index]?.freed.has(number) === true) return undefined;
  }
  return undefined;
}

/** An object that holds a number only; a stream there would send its reader round in a circle. */
function plainNumber(file: PdfFile, revisions: readonly Revision[], ref: PdfRef): PdfValue | undefined {
  const revision = revisions[newestWith(revisions, ref.number) ?? -1];
  const entry = revision?.inUse.get(ref.number);
  if (revision === undefined || entry === undefined) return undefined;
  return readIndirectObject(file.bytes, entry.offset, revision.offset, () => -1).value;
}
