import type { AuditAuthor, AuditEvent } from '@/lib/audit/event';
import type { Db } from '../client';
import { runInTransaction, type Tx } from '../transaction';
import { appendAudit } from './append-audit';

/** What a change returns, and what is to stand in the log of it. No events: nothing was changed. */
export interface Recorded<T> {
  readonly value: T;
  readonly events: readonly AuditEvent[];
}

/**
 * Does a change of one school's rows and writes its events into the log, in one transaction: both or neither. All
 * changes of the domain go through here. The work is done again when it met another transaction.
 */
export async function recordChange<T>(db: Db, by: AuditAuthor, at: Date, work: (tx: Tx) => Promise<Recorded<T>>): Promise<T> {
  return runInTransaction(db, async (tx) => {
    const { value, events } = await work(tx);
    await appendAudit(tx, by, at, events);
    return value;
  });
}
