import { CHAIN_START, type ChainEnd, type ChainEntry } from '@/lib/audit/chain';
import { verifyChain, type ChainFault } from '@/lib/audit/verify-chain';
import type { Db } from '../client';

export type LogVerdict =
  | { readonly ok: true; readonly end: ChainEnd }
  /** `cut`: the entries fit, but the last ones are missing, or the note of the end is; `sequence` is the first not there */
  | { readonly ok: false; readonly sequence: number; readonly fault: ChainFault | 'cut' };

/** Enough to be quick, few enough to fit in memory in any school. */
const PAGE = 1000;

/**
 * Reads a school's whole log and returns its end, or the first entry that was altered, taken out or cut off.
 * @param page how many entries are read at once
 */
export async function verifyLog(db: Db, schoolId: string, page = PAGE): Promise<LogVerdict> {
  // The head is read first, so that an entry added meanwhile is only one more.
  const head = await db.auditHead.findUnique({ where: { schoolId } });
  let end = CHAIN_START;
  for (;;) {
    const entries: ChainEntry[] = await db.auditEntry.findMany({ where: { schoolId, sequence: { gt: end.sequence } }, orderBy: { sequence: 'asc' }, take: page });
    const verdict = verifyChain(entries, end);
    if (!verdict.ok) return verdict;
    end = verdict.end;
    if (entries.length < page) break;
  }
  if (head === null || end.sequence < head.sequence) return { ok: false, sequence: end.sequence + 1, fault: 'cut' };
  if (head.sequence === end.sequence && head.hash !== end.hash) return { ok: false, sequence: end.sequence, fault: 'altered' };
  return { ok: true, end };
}
