import type { PdfDocument } from '../structure/document';
import { getDict } from '../structure/get';
import { arrayOf, isA, nameOf, refTo, withEntries, type PdfArray, type PdfDict, type PdfRef, type PdfValue } from '../structure/objects';
import { pagesOf } from '../structure/pages';
import type { AddedObject } from './append-revision';
import { openForSigning } from './open-for-signing';

export interface ImportedPage {
  /** points */
  readonly width: number;
  readonly height: number;
  /** the drawing, as a form that can be shown anywhere */
  readonly form: PdfRef;
  readonly objects: readonly AddedObject[];
}

/**
 * Takes the first page of a one-page file apart to be shown inside another one: its drawing, and the fonts and
 * pictures that it uses, under numbers of the other file.
 */
export function importPage(pdf: Uint8Array, next: () => number): ImportedPage {
  const document = openForSigning(pdf);
  const [page, ...more] = pagesOf(document);
  const contents = document.resolve(page?.dict.entries.get('Contents'));
  if (page === undefined || more.length > 0 || !isA(contents, 'stream')) throw new Error('not one page with one drawing');
  const copy = copier(document, next);
  const form = refTo(next());
  const box = mediaBox(document, page.dict);
  const dict = withEntries(contents.dict, {
    Type: nameOf('XObject'), Subtype: nameOf('Form'), FormType: 1, BBox: box,
    Resources: copy.value(getDict(document, page.dict, 'Resources')), Length: contents.data.length,
  });
  const [, , width, height] = box.items.map(Number);
  if (width === undefined || height === undefined) throw new Error('a page without a size');
  return { width, height, form, objects: [{ ref: form, body: { kind: 'stream', dict, data: contents.data } }, ...copy.rest()] };
}

/** A drawing of another size would be stretched, and one that ran over has lost its last lines. @throws for either */
export function expectToFit({ width, height }: ImportedPage, rectangle: PdfValue | undefined): void {
  const [left = 0, bottom = 0, right = 0, top = 0] = isA(rectangle, 'array') ? rectangle.items.map(Number) : [];
  const off = Math.max(Math.abs(right - left - width), Math.abs(top - bottom - height));
  if (!(off < 0.5)) throw new Error('the picture of the signature is not as large as its place');
}

/** From the page or, as the format allows, from what is above it. */
function mediaBox(document: PdfDocument, page: PdfDict): PdfArray {
  const own = document.resolve(page.entries.get('MediaBox') ?? getDict(document, page, 'Parent').entries.get('MediaBox'));
  if (!isA(own, 'array')) throw new Error('a page without a size');
  return own;
}

/** Copies values with everything they refer to, each object once. */
function copier(document: PdfDocument, next: () => number) {
  const numbers = new Map<number, number>();
  const waiting: PdfRef[] = [];
  const renumbered = (ref: PdfRef): PdfRef => {
    const known = numbers.get(ref.number);
    const number = known ?? next();
    if (known === undefined) { numbers.set(ref.number, number); waiting.push(ref); }
    return refTo(number);
  };
  const copyDict = (dict: PdfDict): PdfDict => ({ kind: 'dict', entries: new Map([...dict.entries].map(([name, entry]) => [name, value(entry)])) });
  const value = (original: PdfValue): PdfValue => {
    if (isA(original, 'ref')) return renumbered(original);
    if (isA(original, 'array')) return arrayOf(original.items.map(value));
    if (isA(original, 'dict')) return copyDict(original);
    if (isA(original, 'stream')) return { kind: 'stream', dict: withEntries(copyDict(original.dict), { Length: original.data.length }), data: original.data };
    return original;
  };
  /** What the copied values refer to, and what that refers to. */
  const rest = (): readonly AddedObject[] => {
    const objects: AddedObject[] = [];
    for (let ref = waiting.shift(); ref !== undefined; ref = waiting.shift()) objects.push({ ref: renumbered(ref), body: value(document.resolve(ref) ?? null) });
    return objects;
  };
  return { value, rest };
}
