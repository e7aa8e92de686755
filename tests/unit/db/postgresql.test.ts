import { appendFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { readDatabaseState } from '@/lib/db/database-state';
import { getInstallation, recordStart } from '@/lib/db/installation';
import { migrate } from '@/lib/db/migrate/migrate';
import type { TemporaryPostgresql } from '@/scripts/author/temporary-postgresql';
import { pendingSql } from '@/scripts/author/pending-sql';
import { migrateAtOnce } from '@/tests/support/migrate-at-once';
import { migrationProject, writtenMigrations } from '@/tests/support/migration-project';
import { newPostgresqlDatabase, postgresqlBinaries, queryPostgresql, startPostgresql } from '@/tests/support/postgresql-for-tests';

const WRITTEN = writtenMigrations('postgresql');
const [FIRST] = WRITTEN;
const TABLES = `SELECT table_name FROM information_schema.tables WHERE table_schema = 'public' ORDER BY table_name`;

let server: TemporaryPostgresql | undefined;
beforeAll(async () => {
  if (postgresqlBinaries) server = await startPostgresql();
});
afterAll(() => server?.stop());

async function emptyDatabase(name: string): Promise<string> {
  if (!server) throw new Error('PostgreSQL was not started');
  return newPostgresqlDatabase(server, name);
}

describe('a PostgreSQL database', () => {
  it.runIf(postgresqlBinaries)('gets its tables once, and the same answers as SQLite', async () => {
    const url = await emptyDatabase('once');
    const { root } = migrationProject('postgresql');
    expect(await migrate(url, root)).toEqual({ ok: true, applied: WRITTEN });
    expect(await migrate(url, root)).toEqual({ ok: true, applied: [] });

    const db = openDatabase(url);
    expect(await readDatabaseState(db)).toEqual({ database: 'not-prepared' });
    const at = new Date('2026-11-25T12:00:00.000Z');
    await recordStart(db, { version: '0.1.0', at });
    await recordStart(db, { version: '0.2.0', at: new Date('2026-11-26T12:00:00.000Z') });
    expect(await getInstallation(db)).toEqual({ createdAt: at, createdByVersion: '0.1.0', lastStartedAt: new Date('2026-11-26T12:00:00.000Z') });
    expect(await readDatabaseState(db)).toMatchObject({ database: 'ready', migrations: WRITTEN.length });
    await db.$disconnect();
  });

  it.runIf(postgresqlBinaries)('refuses a changed file', async () => {
    const url = await emptyDatabase('changed');
    const { root, fileOf } = migrationProject('postgresql');
    await migrate(url, root);
    appendFileSync(fileOf(FIRST), '-- a later thought\n');
    expect(await migrate(url, root)).toEqual({ ok: false, refusal: { kind: 'changed', migration: FIRST } });
  });

  it.runIf(postgresqlBinaries)('refuses what a newer version has migrated', async () => {
    const url = await emptyDatabase('newer');
    const newer = migrationProject('postgresql');
    newer.add('29990101000000_from_the_future', 'CREATE TABLE "Future" (id TEXT PRIMARY KEY);');
    await migrate(url, newer.root);
    const result = await migrate(url, migrationProject('postgresql').root);
    expect(result).toEqual({ ok: false, refusal: { kind: 'unknown', migration: '29990101000000_from_the_future' } });
  });

  it.runIf(postgresqlBinaries)('takes everything back when one statement fails', async () => {
    const url = await emptyDatabase('failing');
    const { root, add } = migrationProject('postgresql');
    add('29990101000000_bad', 'CREATE TABLE "HalfWay" (id TEXT PRIMARY KEY); INSERT INTO "Nowhere" VALUES (1);');
    expect(await migrate(url, root)).toMatchObject({ ok: false, refusal: { kind: 'sql-failed', migration: '29990101000000_bad' } });
    expect(await queryPostgresql(url, TABLES)).toEqual([]);
  });

  it.runIf(postgresqlBinaries)('is migrated once when four start at the same time', async () => {
    const url = await emptyDatabase('four');
    const applied = await migrateAtOnce(4, url, migrationProject('postgresql').root);
    expect(applied.filter((names) => names.length > 0)).toEqual([WRITTEN]);
  });

  it.runIf(postgresqlBinaries)('has in its migrations all that the models ask for', async () => {
    expect(await pendingSql(await emptyDatabase('models'), process.cwd())).toBe('');
  });
});
