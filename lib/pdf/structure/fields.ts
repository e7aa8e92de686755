import type { PdfDocument } from './document';
import { catalogOf, getArray } from './get';
import { isA, isNamed, type PdfDict, type PdfRef, type PdfValue, type Span } from './objects';
import { expectOfFile } from './pdf-fault';
import { decodeText } from './text';

/** A field for a signature, which is its own widget on the page. */
export interface SignatureFieldInFile {
  readonly name: string;
  readonly ref: PdfRef;
  readonly widget: PdfDict;
  readonly signature: SignatureInFile | undefined;
}

/** The dictionary of a signature, in an object of its own. */
export interface SignatureInFile extends Span { readonly ref: PdfRef; readonly dict: PdfDict }

const MOST_FIELDS = 200;

/**
 * The signature fields of a document, found by walking its form as a reader does, not by searching bytes.
 * @throws PdfFault for a form that goes in a circle, or a signature that stands where it cannot be looked at
 */
export function signatureFields(document: PdfDocument): readonly SignatureFieldInFile[] {
  const form = document.resolve(catalogOf(document).dict.entries.get('AcroForm'));
  if (form === undefined || form === null) return [];
  expectOfFile(isA(form, 'dict'), 'a form that is no dictionary');
  const found: SignatureFieldInFile[] = [];
  const seen = new Set<number>();
  const visit = (parent: PdfDict, list: 'Fields' | 'Kids'): void => {
    for (const ref of getArray(document, parent, list).items) {
      expectOfFile(isA(ref, 'ref') && !seen.has(ref.number) && seen.size < MOST_FIELDS, 'fields in a circle, or too many');
      seen.add(ref.number);
      const field = document.resolve(ref);
      expectOfFile(isA(field, 'dict'), 'a field that is no dictionary');
      if (isNamed(field.entries.get('FT'), 'Sig')) found.push(signatureField(document, ref, field));
      else visit(field, 'Kids');
    }
  };
  visit(form, 'Fields');
  return found;
}

function signatureField(document: PdfDocument, ref: PdfRef, widget: PdfDict): SignatureFieldInFile {
  const name = document.resolve(widget.entries.get('T'));
  const value = widget.entries.get('V');
  return { name: isA(name, 'string') ? decodeText(name) : '', ref, widget, signature: value === undefined || value === null ? undefined : signatureOf(document, value) };
}

function signatureOf(document: PdfDocument, value: PdfValue): SignatureInFile {
  expectOfFile(isA(value, 'ref'), 'a signature that is not in an object of its own');
  const object = document.object(value.number);
  expectOfFile(object !== undefined && isA(object.value, 'dict'), 'a signature that is no dictionary');
  return { ref: value, dict: object.value, start: object.start, end: object.end };
}
