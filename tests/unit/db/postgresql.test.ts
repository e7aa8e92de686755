import { appendFileSync } from 'node:fs';
import { describe, expect, inject, it } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { readDatabaseState } from '@/lib/db/database-state';
import { getInstallation, recordStart } from '@/lib/db/installation';
import { migrate } from '@/lib/db/migrate/migrate';
import { pendingSql } from '@/scripts/author/pending-sql';
import type {} from '@/tests/support/databases-global-setup';
import { migrateAtOnce } from '@/tests/support/migrate-at-once';
import { migrationProject, writtenMigrations } from '@/tests/support/migration-project';
import { newPostgresqlDatabase, queryPostgresql } from '@/tests/support/postgresql-for-tests';

const WRITTEN = writtenMigrations('postgresql');
const [FIRST] = WRITTEN;
const TABLES = `SELECT table_name FROM information_schema.tables WHERE table_schema = 'public' ORDER BY table_name`;

const { postgresql } = inject('preparedDatabases');

async function emptyDatabase(name: string): Promise<string> {
  if (!postgresql) throw new Error('PostgreSQL is not installed here');
  return newPostgresqlDatabase(postgresql.url, `empty_${name}`);
}

describe('a PostgreSQL database', () => {
  it.runIf(postgresql)('gets its tables once, and the same answers as SQLite', async () => {
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

  it.runIf(postgresql)('refuses a changed file', async () => {
    const url = await emptyDatabase('changed');
    const { root, fileOf } = migrationProject('postgresql');
    await migrate(url, root);
    appendFileSync(fileOf(FIRST), '-- a later thought\n');
    expect(await migrate(url, root)).toEqual({ ok: false, refusal: { kind: 'changed', migration: FIRST } });
  });

  it.runIf(postgresql)('refuses what a newer version has migrated', async () => {
    const url = await emptyDatabase('newer');
    const newer = migrationProject('postgresql');
    newer.add('29990101000000_from_the_future', 'CREATE TABLE "Future" (id TEXT PRIMARY KEY);');
    await migrate(url, newer.root);
    const result = await migrate(url, migrationProject('postgresql').root);
    expect(result).toEqual({ ok: false, refusal: { kind: 'unknown', migration: '29990101000000_from_the_future' } });
  });

  it.runIf(postgresql)('takes everything back when one statement fails', async () => {
    const url = await emptyDatabase('failing');
    const { root, add } = migrationProject('postgresql');
    add('29990101000000_bad', 'CREATE TABLE "HalfWay" (id TEXT PRIMARY KEY); INSERT INTO "Nowhere" VALUES (1);');
    expect(await migrate(url, root)).toMatchObject({ ok: false, refusal: { kind: 'sql-failed', migration: '29990101000000_bad' } });
    expect(await queryPostgresql(url, TABLES)).toEqual([]);
  });

  it.runIf(postgresql)('is migrated once when four start at the same time', async () => {
    const url = await emptyDatabase('four');
    const applied = await migrateAtOnce(4, url, migrationProject('postgresql').root);
    expect(applied.filter((names) => names.length > 0)).toEqual([WRITTEN]);
  });

  it.runIf(postgresql)('has in its migrations all that the models ask for', async () => {
    expect(await pendingSql(await emptyDatabase('models'), process.cwd())).toBe('');
  });
});
