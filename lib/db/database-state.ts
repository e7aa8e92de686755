import type { Db } from './client';
import { getInstallation, type Installation } from './installation';

export type DatabaseState =
  | { database: 'ready'; migrations: number; installation: Installation }
  | { database: 'not-prepared' }
  | { database: 'unreachable'; cause: unknown };

/** Prisma's code for a query on a table that does not exist. */
const TABLE_MISSING = 'P2021';

/**
 * Returns whether the database can be used: `ready` with the number of applied migrations, `not-prepared` when its
 * tables or the row written at start are missing, `unreachable` with the cause for every other fault.
 */
export async function readDatabaseState(db: Db): Promise<DatabaseState> {
  try {
    const installation = await getInstallation(db);
    if (!installation) return { database: 'not-prepared' };
    return { database: 'ready', migrations: await countMigrations(db), installation };
  } catch (cause) {
    return hasCode(cause, TABLE_MISSING) ? { database: 'not-prepared' } : { database: 'unreachable', cause };
  }
}

async function countMigrations(db: Db): Promise<number> {
  const rows = await db.$queryRaw<{ applied: number | bigint }[]>`
    SELECT COUNT(*) AS applied FROM "_prisma_migrations" WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL`;
  const [row] = rows;
  if (!row) throw new Error('COUNT(*) returned no row');
  return Number(row.applied);
}

function hasCode(error: unknown, code: string): boolean {
  return typeof error === 'object' && error !== null && 'code' in error && error.code === code;
}
