import 'server-only';
import { readDatabaseState } from '@/lib/db/database-state';
import packageJson from '@/package.json';
import { database } from './database';

export interface Health {
  status: 'ok' | 'failing';
  version: string;
  database: 'ready' | 'not-prepared' | 'unreachable';
  /** Applied migrations; null when they could not be counted. */
  migrations: number | null;
  /** When the program was last started on this database, ISO 8601; null when that is not known. */
  lastStartedAt: string | null;
}

/** Returns whether the program can do its work. The cause of a fault goes to the server's log, not to the caller. */
export async function readHealth(): Promise<Health> {
  const state = await readDatabaseState(database());
  if (state.database === 'unreachable') console.error('The database cannot be reached:', state.cause);
  const ready = state.database === 'ready';
  return {
    status: ready ? 'ok' : 'failing',
    version: packageJson.version,
    database: state.database,
    migrations: ready ? state.migrations : null,
    lastStartedAt: ready ? state.installation.lastStartedAt.toISOString() : null,
  };
}
