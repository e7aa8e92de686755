import type { Paper } from '@/lib/papers/paper';
import type { RenderOptions } from '@/lib/pdf/worker/paper-renderer';
import { fingerprintOfPaper } from './paper-data';

/** Sets a paper as a PDF. */
export type Make = (paper: Paper, options: RenderOptions) => Promise<Uint8Array>;

/** One making, and everybody who waits for it. */
interface Making {
  readonly pdf: Promise<Uint8Array>;
  readonly stop: AbortController;
  readonly onPage: Set<(pageNumber: number) => void>;
  waiting: number;
  settled: boolean;
}

/**
 * Makes each paper once, by the fingerprint of all that stands on it: who asks for it while it is being made waits for
 * the same, and who asks soon after gets what is kept. Given up only when nobody waits for it any more; a making that
 * failed is not kept.
 * @param most how many papers are kept at hand
 */
export function madeOnce(make: Make, most = 6): Make {
  const begun = new Map<string, Making>();
  const begin = (fingerprint: string, paper: Paper): Making => {
    const [stop, onPage] = [new AbortController(), new Set<(pageNumber: number) => void>()];
    const making: Making = { stop, onPage, waiting: 0, settled: false, pdf: make(paper, { signal: stop.signal, onPage: (pageNumber) => { for (const tell of onPage) tell(pageNumber); } }) };
    begun.set(fingerprint, making);
    making.pdf.then(
      () => { making.settled = true; forgetOldest(begun, most); },
      () => { making.settled = true; if (begun.get(fingerprint) === making) begun.delete(fingerprint); },
    );
    return making;
  };
  return async (paper, { onPage, signal }) => {
    signal?.throwIfAborted();
    const fingerprint = fingerprintOfPaper(paper);
    const making = begun.get(fingerprint) ?? begin(fingerprint, paper);
    return waitFor(making, onPage, signal, () => begun.delete(fingerprint));
  };
}

async function waitFor(making: Making, onPage: RenderOptions['onPage'], signal: AbortSignal | undefined, forget: () => void): Promise<Uint8Array> {
  making.waiting += 1;
  if (onPage !== undefined) making.onPage.add(onPage);
  const given = new Promise<never>((_resolve, reject) => {
    signal?.addEventListener('abort', () => reject(signal.reason instanceof Error ? signal.reason : new Error('given up')), { once: true });
  });
  try {
    return await Promise.race([making.pdf, given]);
  } finally {
    making.waiting -= 1;
    if (onPage !== undefined) making.onPage.delete(onPage);
    if (making.waiting === 0 && !making.settled) {
      forget();
      making.stop.abort();
    }
  }
}

function forgetOldest(begun: Map<string, Making>, most: number): void {
  const settled = [...begun].filter(([, making]) => making.settled);
  for (const [fingerprint] of settled.slice(0, Math.max(0, settled.length - most))) begun.delete(fingerprint);
}
