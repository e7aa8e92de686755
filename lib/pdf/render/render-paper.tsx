import { Document, Page, renderToBuffer } from '@react-pdf/renderer';
import { Component, type ReactElement, type ReactNode } from 'react';
import { loadFonts } from './fonts/load-fonts';
import { PageReport } from './page-report';

/**
 * Sets a paper and returns the PDF. The same paper gives the same bytes, in any process and whatever was set there
 * before. Takes the processor for itself while it works: for anything longer than a page there is the worker.
 * @param paper a PaperDocument with its pages, made from a plain view model
 * @param onPage told the number of each page as it is set; pages are set more than once
 * @throws what a part of the paper throws
 */
export async function renderPaper(paper: ReactElement, onPage: (pageNumber: number) => void = () => undefined): Promise<Uint8Array> {
  loadFonts();
  const failures: unknown[] = [];
  const watched = <Watch onFailure={(error) => failures.push(error)}>{paper}</Watch>;
  const pdf = await renderToBuffer(<PageReport.Provider value={onPage}>{watched}</PageReport.Provider>);
  const [failure] = failures;
  if (failure !== undefined) throw failure instanceof Error ? failure : new Error(String(failure));
  return new Uint8Array(pdf);
}

interface WatchProps { readonly onFailure: (error: unknown) => void; readonly children: ReactNode }

/** Takes note of what went wrong: the writer itself goes on with half a tree and then fails over something else. */
class Watch extends Component<WatchProps, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }

  override componentDidCatch(error: unknown): void {
    this.props.onFailure(error);
  }

  override render(): ReactNode {
    return this.state.failed ? <Document><Page /></Document> : this.props.children;
  }
}
