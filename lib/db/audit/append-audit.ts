import { CHAIN_START, nextEntry, type ChainEntry } from '@/lib/audit/chain';
import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';

/** Begins the chain of a new school; once, in the transaction that makes the school. */
export async function openAuditChain(tx: Tx, schoolId: string): Promise<void> {
  await tx.auditHead.create({ data: { schoolId, ...CHAIN_START } });
}

/**
 * Adds events to the school's chain, inside the transaction of the change they tell of, so that both are written or
 * neither. Call it last: from here to the end of the transaction nobody else can add to this chain.
 * @param at when it was done; kept to the millisecond
 */
export async function appendAudit(tx: Tx, by: AuditAuthor, at: Date, events: readonly AuditEvent[]): Promise<void> {
  if (events.length === 0) return;
  // Moving the number takes the row's lock, so on PostgreSQL two writers come here one after the other and the hash read
  // is that of the entry before.
  const head = await tx.auditHead.update({ where: { schoolId: by.schoolId }, data: { sequence: { increment: events.length } } });
  const entries = entriesAfter({ sequence: head.sequence - events.length, hash: head.hash }, by, at, events);
  await tx.auditEntry.createMany({ data: entries });
  const last = entries.at(-1);
  const moved = await tx.auditHead.updateMany({ where: head, data: { hash: last?.hash } });
  if (moved.count !== 1) throw new MetAnother('The log was added to at the same moment');
}

function entriesAfter(end: typeof CHAIN_START, by: AuditAuthor, at: Date, events: readonly AuditEvent[]): ChainEntry[] {
  const entries: ChainEntry[] = [];
  for (const event of events) entries.push(nextEntry(entries.at(-1) ?? end, by, at, event));
  return entries;
}
