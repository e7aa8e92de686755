// Once for all test files: a SQLite file that has its tables, and one PostgreSQL server with such a database.
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { migrate } from '@/lib/db/migrate/migrate';
import { findPostgresql, startTemporaryPostgresql, type TemporaryPostgresql } from '@/scripts/author/temporary-postgresql';
import { newPostgresqlDatabase } from './postgresql-for-tests';

export interface PreparedDatabases {
  /** a file with all tables, to be copied */
  readonly sqliteFile: string;
  /** address of the server, and the name of a database with all tables; undefined where PostgreSQL is not installed */
  readonly postgresql: { readonly url: string; readonly template: string } | undefined;
}

declare module 'vitest' {
  export interface ProvidedContext { preparedDatabases: PreparedDatabases }
}

const TEMPLATE = 'all_tables';

/** Returns what takes everything away again. */
export default async function prepareDatabases(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-tests-'));
  let server: TemporaryPostgresql | undefined;
  const takeAway = async () => {
    await server?.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    const sqliteFile = path.join(folder, 'all-tables.db');
    await makeTables(`file:${sqliteFile}`);
    server = await serverWithTemplate();
    project.provide('preparedDatabases', { sqliteFile, postgresql: server ? { url: server.url, template: TEMPLATE } : undefined });
    return takeAway;
  } catch (error) {
    await takeAway();
    throw error;
  }
}

async function serverWithTemplate(): Promise<TemporaryPostgresql | undefined> {
  const programs = findPostgresql();
  if (!programs) {
    console.warn('The tests on PostgreSQL do not run: its programs are not installed here (apt-get install postgresql).');
    return undefined;
  }
  const server = await startTemporaryPostgresql(programs);
  try {
    await makeTables(await newPostgresqlDatabase(server.url, TEMPLATE));
    return server;
  } catch (error) {
    await server.stop();
    throw error;
  }
}

async function makeTables(url: string): Promise<void> {
  const migrated = await migrate(url, process.cwd());
  if (!migrated.ok) throw new Error(`The tables of the tests could not be made: ${JSON.stringify(migrated.refusal)}`);
}
