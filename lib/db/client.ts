import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { PrismaPg } from '@prisma/adapter-pg';
import { engineOfUrl } from './database-url';
import { PrismaClient as PostgresqlClient } from './generated/postgresql/client';
import { PrismaClient as SqliteClient } from './generated/sqlite/client';

/** The database as the program sees it. Typed as the SQLite client, which rejects what only PostgreSQL can do. */
export type Db = SqliteClient;

/** How long a SQLite connection waits for another one's lock, ms. */
const BUSY_TIMEOUT_MS = 5000;
const POSTGRESQL_CONNECTIONS = 10;

/**
 * Returns a client for the address; it connects with its first query. The caller ends it with `$disconnect()`.
 * Throws when the address is of neither engine: settings are checked before they come here.
 */
export function openDatabase(url: string): Db {
  const engine = engineOfUrl(url);
  if (engine === 'sqlite') return new SqliteClient({ adapter: new PrismaBetterSqlite3({ url, timeout: BUSY_TIMEOUT_MS }) });
  if (engine === 'postgresql') {
    const adapter = new PrismaPg({ connectionString: url, max: POSTGRESQL_CONNECTIONS });
    // The two generated clients differ in the type of one option ($transaction's isolationLevel) and nowhere else.
    return new PostgresqlClient({ adapter }) as unknown as Db;
  }
  throw new Error('The database address must begin with file: or postgresql://');
}
