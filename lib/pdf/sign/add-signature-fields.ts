import type { PdfDocument } from '../structure/document';
import { catalogOf, getArray } from '../structure/get';
import { arrayOf, dictOf, nameOf, refTo, withEntries, type PdfRef } from '../structure/objects';
import { pagesOf, type PdfPage } from '../structure/pages';
import { plainString } from '../structure/text';
import { appendRevision, type AddedObject } from './append-revision';
import { expectToFit, importPage } from './import-page';
import { numbersAfter, openForSigning } from './open-for-signing';
import type { SignatureField } from './signature-field';

/** Print it, and let nobody move it (ISO 32000-2, 12.5.3). */
const PRINT_AND_LOCKED = 4 + 128;
/** There are signatures, and the file may only be added to (ISO 32000-2, 12.7.3). */
const SIGNATURES_AND_APPEND_ONLY = 3;

/**
 * Puts empty signature fields into an unsigned file, as an addition to it. They are all there before the first
 * signature, so that each signature fills in a field and changes nothing else.
 * @param fields at least one, each with its own role
 */
export function addSignatureFields(pdf: Uint8Array, fields: readonly SignatureField[]): Uint8Array {
  const document = openForSigning(pdf);
  const catalog = catalogOf(document);
  if (fields.length === 0 || new Set(fields.map(({ role }) => role)).size !== fields.length) throw new Error('no fields, or two of one role');
  if (catalog.dict.entries.has('AcroForm')) throw new Error('the file has a form already');
  const next = numbersAfter(document);
  const pages = pagesOf(document);
  const placed = fields.map((field) => placeField(field, pages, next));
  const form = dictOf({ Fields: arrayOf(placed.map(({ widget }) => widget)), SigFlags: SIGNATURES_AND_APPEND_ONLY });
  return appendRevision(document, [
    ...placed.flatMap(({ objects }) => objects),
    ...pages.flatMap((page) => pageWith(document, page, placed.filter((field) => field.page === page).map(({ widget }) => widget))),
    { ref: catalog.ref, body: withEntries(catalog.dict, { AcroForm: form }) },
  ]).bytes;
}

interface Placed { readonly page: PdfPage; readonly widget: PdfRef; readonly objects: readonly AddedObject[] }

function placeField({ role, page: index, rectangle, appearance }: SignatureField, pages: readonly PdfPage[], next: () => number): Placed {
  const page = pages[index];
  if (page === undefined) throw new Error(`there is no page ${index}`);
  const drawn = importPage(appearance, next);
  expectToFit(drawn, arrayOf(rectangle));
  const widget = refTo(next());
  const body = dictOf({
    Type: nameOf('Annot'), Subtype: nameOf('Widget'), FT: nameOf('Sig'), T: plainString(role),
    Rect: arrayOf(rectangle), F: PRINT_AND_LOCKED, P: page.ref, AP: dictOf({ N: drawn.form }),
  });
  return { page, widget, objects: [...drawn.objects, { ref: widget, body }] };
}

function pageWith(document: PdfDocument, page: PdfPage, widgets: readonly PdfRef[]): readonly AddedObject[] {
  if (widgets.length === 0) return [];
  const annotations = getArray(document, page.dict, 'Annots').items;
  return [{ ref: page.ref, body: withEntries(page.dict, { Annots: arrayOf([...annotations, ...widgets]) }) }];
}
