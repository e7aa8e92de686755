import type { PdfDocument } from './document';
import { catalogOf, getArray, getRef } from './get';
import { isA, isNamed, type PdfDict, type PdfRef } from './objects';
import { expectOfFile } from './pdf-fault';

export interface PdfPage { readonly ref: PdfRef; readonly dict: PdfDict }

const MOST_PAGES = 5000;

/** All pages in their order. @throws PdfFault for a tree that goes in a circle */
export function pagesOf(document: PdfDocument): readonly PdfPage[] {
  const pages: PdfPage[] = [];
  const seen = new Set<number>();
  const visit = (ref: PdfRef): void => {
    expectOfFile(!seen.has(ref.number) && seen.size < MOST_PAGES, 'pages in a circle');
    seen.add(ref.number);
    const node = document.resolve(ref);
    expectOfFile(isA(node, 'dict'), 'a page that is no dictionary');
    if (isNamed(node.entries.get('Type'), 'Page')) { pages.push({ ref, dict: node }); return; }
    for (const kid of getArray(document, node, 'Kids').items) {
      expectOfFile(isA(kid, 'ref'), 'a page that is no reference');
      visit(kid);
    }
  };
  visit(getRef(catalogOf(document).dict, 'Pages'));
  return pages;
}
