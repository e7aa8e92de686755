import type { PdfDocument } from './document';
import { isA, type PdfArray, type PdfDict, type PdfRef } from './objects';
import { expectOfFile } from './pdf-fault';

/** The dictionary under a name, followed if it stands elsewhere. @throws PdfFault where there is something else */
export function getDict(document: PdfDocument, dict: PdfDict, name: string): PdfDict {
  const value = document.resolve(dict.entries.get(name));
  expectOfFile(isA(value, 'dict'), `/${name} is no dictionary`);
  return value;
}

/** The list under a name; an absent one is empty. @throws PdfFault where there is something else */
export function getArray(document: PdfDocument, dict: PdfDict, name: string): PdfArray {
  const value = document.resolve(dict.entries.get(name)) ?? { kind: 'array', items: [] };
  expectOfFile(isA(value, 'array'), `/${name} is no list`);
  return value;
}

/** The reference under a name. @throws PdfFault where there is something else */
export function getRef(dict: PdfDict, name: string): PdfRef {
  const value = dict.entries.get(name);
  expectOfFile(isA(value, 'ref'), `/${name} is no reference`);
  return value;
}

/** The catalog: where everything that is shown begins. */
export function catalogOf(document: PdfDocument): { readonly ref: PdfRef; readonly dict: PdfDict } {
  return { ref: getRef(document.trailer, 'Root'), dict: getDict(document, document.trailer, 'Root') };
}
