import { openDocument, type PdfDocument } from '../structure/document';
import { signatureFields, type SignatureFieldInFile } from '../structure/fields';
import { isA, type PdfDict, type PdfValue } from '../structure/objects';
import type { PdfFile } from '../structure/read-file';
import { writeValue } from '../structure/write';
import { reachableFrom } from './reachable';

/** What a signature changes in the field that it fills in, and in the end of the file. */
const OF_A_FIELD: ReadonlySet<string> = new Set(['V', 'AP']);
const OF_A_TRAILER: ReadonlySet<string> = new Set(['Size', 'Prev', 'ID']);

/**
 * Whether a revision that came after a signature does nothing but sign: it fills in one field that was there and
 * empty, and adds what that signature and its picture are made of. Anything else shows a reader something that
 * the first person did not sign, or hides something that they did.
 */
export function onlySigns(file: PdfFile, index: number): boolean {
  const before = openDocument(file, index - 1);
  const after = openDocument(file, index);
  const revision = file.revisions[index];
  const filled = signatureFields(after).filter(({ signature }) => signature !== undefined && after.originOf(signature.ref.number) === index);
  const [field] = filled;
  if (revision === undefined || field === undefined || filled.length !== 1 || revision.freed.size > 0) return false;
  if (!sameBut(before.trailer, after.trailer, OF_A_TRAILER)) return false;
  const added = reachableFrom(after, [field.widget.entries.get('V'), field.widget.entries.get('AP')]);
  return [...revision.inUse.keys()].every((number) => (number === field.ref.number ? onlyFillsIn(before, field) : before.object(number) === undefined && added.has(number)));
}

function onlyFillsIn(before: PdfDocument, field: SignatureFieldInFile): boolean {
  const empty = before.object(field.ref.number)?.value;
  return isA(empty, 'dict') && !empty.entries.has('V') && sameBut(empty, field.widget, OF_A_FIELD);
}

/** Whether two dictionaries agree in all entries but some. */
function sameBut(a: PdfDict, b: PdfDict, apart: ReadonlySet<string>): boolean {
  const names = new Set([...a.entries.keys(), ...b.entries.keys()]);
  return [...names].every((name) => apart.has(name) || same(a.entries.get(name), b.entries.get(name)));
}

function same(a: PdfValue | undefined, b: PdfValue | undefined): boolean {
  return a !== undefined && b !== undefined && Buffer.from(writeValue(a)).equals(writeValue(b));
}
