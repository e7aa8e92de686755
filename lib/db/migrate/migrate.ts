import path from 'node:path';
import { engineOfUrl, sqliteFileOfUrl } from '../database-url';
import type { MigrateResult } from './migration';
import { migratePostgresql } from './migrate-postgresql';
import { migrateSqlite } from './migrate-sqlite';
import { readMigrations } from './read-migrations';

/**
 * Brings the database at `url` to the version of the files below `root`. May be called by several starts at once:
 * one applies, the others wait and find nothing left to do.
 * @returns the names applied, none when the database was current; or why it was left as it was
 */
export async function migrate(url: string, root: string): Promise<MigrateResult> {
  const engine = engineOfUrl(url);
  if (!engine) throw new Error('The database address must begin with file: or postgresql://');
  const migrations = readMigrations(path.join(root, 'prisma', engine, 'migrations'));
  return engine === 'sqlite' ? migrateSqlite(sqliteFileOfUrl(url, root), migrations) : migratePostgresql(url, migrations);
}
