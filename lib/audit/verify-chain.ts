import { CHAIN_START, entryHash, type ChainEnd, type ChainEntry } from './chain';

/** `altered`: the entry no longer gives its hash. `gap`: an entry is missing before it. `unlinked`: it does not follow the one before. */
export type ChainFault = 'altered' | 'gap' | 'unlinked';

export type ChainVerdict =
  | { readonly ok: true; readonly end: ChainEnd }
  | { readonly ok: false; readonly sequence: number; readonly fault: ChainFault };

/**
 * Returns the end of the chain, or the first entry that does not fit. An alteration by somebody who wrote all later
 * entries again is not seen here, only by holding the end to one that was noted elsewhere, as signed papers do.
 * @param entries in the order of their numbers
 * @param start end of the part that was checked before; the beginning when missing
 */
export function verifyChain(entries: Iterable<ChainEntry>, start: ChainEnd = CHAIN_START): ChainVerdict {
  let end = start;
  for (const entry of entries) {
    const fault = faultOf(entry, end);
    if (fault !== null) return { ok: false, sequence: entry.sequence, fault };
    end = { sequence: entry.sequence, hash: entry.hash };
  }
  return { ok: true, end };
}

function faultOf(entry: ChainEntry, end: ChainEnd): ChainFault | null {
  if (entry.sequence !== end.sequence + 1) return 'gap';
  if (entry.previousHash !== end.hash) return 'unlinked';
  return entryHash(entry) === entry.hash ? null : 'altered';
}
