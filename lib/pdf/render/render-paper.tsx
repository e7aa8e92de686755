import { renderToBuffer } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { loadFonts } from './fonts/load-fonts';
import { PageReport } from './page-report';

/**
 * Sets a paper and returns the PDF. The same paper gives the same bytes, in any process and whatever was set there
 * before. Takes the processor for itself while it works: for anything longer than a page there is the worker.
 * @param paper a PaperDocument with its pages, made from a plain view model
 * @param onPage told the number of each page as it is set; pages are set more than once
 */
export async function renderPaper(paper: ReactElement, onPage: (pageNumber: number) => void = () => undefined): Promise<Uint8Array> {
  loadFonts();
  return new Uint8Array(await renderToBuffer(<PageReport.Provider value={onPage}>{paper}</PageReport.Provider>));
}
