import { setTimeout as sleep } from 'node:timers/promises';
import type { Db } from './client';
import type { Prisma } from './generated/sqlite/client';
import { whyToTryAgain } from './why-to-try-again';

/** The database inside of one transaction. */
export type Tx = Prisma.TransactionClient;

/** How long to wait for a connection, and how long the work may take, ms. On SQLite all writers stand in one line. */
const LIMITS = { maxWait: 10_000, timeout: 20_000 };

/** How often the work is done in all before its error is handed on. */
const TRIES = { 'met-another': 8, 'taken': 3 } as const;
const FIRST_PAUSE_MS = 5;

/**
 * Runs the work in one transaction and returns what it returns; when it throws, nothing of it was written, and the
 * error is thrown on. Work that met another transaction is done again from its beginning, so it must read anew all it
 * decides by, and must do nothing that cannot be taken back, such as sending a message.
 */
export async function runInTransaction<T>(db: Db, work: (tx: Tx) => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await db.$transaction(work, LIMITS);
    } catch (error) {
      const why = whyToTryAgain(error);
      if (why === null || attempt >= TRIES[why]) throw error;
    }
    // Each a little different, so that two who met do not meet again.
    await sleep(FIRST_PAUSE_MS * 2 ** attempt * (0.5 + Math.random()));
  }
}
