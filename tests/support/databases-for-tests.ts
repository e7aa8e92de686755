import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { afterAll, beforeAll, onTestFinished } from 'vitest';
import { openDatabase, type Db } from '@/lib/db/client';
import type { DatabaseEngine } from '@/lib/db/database-url';
import { migrate } from '@/lib/db/migrate/migrate';
import type { TemporaryPostgresql } from '@/scripts/author/temporary-postgresql';
import { newPostgresqlDatabase, postgresqlBinaries, startPostgresql } from './postgresql-for-tests';
import { temporaryFolder } from './temporary-folder';

/** The engines that can be had here; for `describe.each`. */
export const ENGINES_HERE: readonly DatabaseEngine[] = postgresqlBinaries ? ['sqlite', 'postgresql'] : ['sqlite'];

export interface DatabaseForTest { readonly db: Db; readonly url: string }

/**
 * To be called in a `describe`: starts what the engine needs, and returns a function that makes a new database with all
 * tables for the running test.
 */
export function databasesFor(engine: DatabaseEngine): () => Promise<DatabaseForTest> {
  let server: TemporaryPostgresql | undefined;
  if (engine === 'postgresql') {
    beforeAll(async () => { server = await startPostgresql(); });
    afterAll(() => server?.stop());
  }
  return async () => {
    const url = server ? await newPostgresqlDatabase(server, `test_${randomUUID().replaceAll('-', '')}`) : `file:${path.join(temporaryFolder(), 'test.db')}`;
    const migrated = await migrate(url, process.cwd());
    if (!migrated.ok) throw new Error(`The database of the test could not be made: ${JSON.stringify(migrated.refusal)}`);
    const db = openDatabase(url);
    onTestFinished(() => db.$disconnect());
    return { db, url };
  };
}
