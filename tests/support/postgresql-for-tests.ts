import pg from 'pg';
import { findPostgresql, startTemporaryPostgresql, type TemporaryPostgresql } from '@/scripts/author/temporary-postgresql';

export const postgresqlBinaries = findPostgresql();
if (!postgresqlBinaries) {
  console.warn('The tests on PostgreSQL do not run: its programs are not installed here (apt-get install postgresql).');
}

/** Starts a server for the tests of one file; only to be called where `postgresqlBinaries` are there. */
export function startPostgresql(): Promise<TemporaryPostgresql> {
  if (!postgresqlBinaries) throw new Error('PostgreSQL is not installed');
  return startTemporaryPostgresql(postgresqlBinaries);
}

/** Makes an empty database on a server and returns its address. */
export async function newPostgresqlDatabase(server: TemporaryPostgresql, name: string): Promise<string> {
  await queryPostgresql(server.url, `CREATE DATABASE "${name}"`);
  return server.url.replace(/\/postgres$/, `/${name}`);
}

/** Runs one statement and returns its rows. */
export async function queryPostgresql(url: string, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const result = await client.query<Record<string, unknown>>(sql);
    return result.rows;
  } finally {
    await client.end();
  }
}
