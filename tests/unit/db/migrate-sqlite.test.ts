import { appendFileSync, statSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { migrate } from '@/lib/db/migrate/migrate';
import { migrateAtOnce } from '@/tests/support/migrate-at-once';
import { migrationProject, writtenMigrations } from '@/tests/support/migration-project';

const WRITTEN = writtenMigrations('sqlite');
const [FIRST] = WRITTEN;

function newDatabase() {
  const project = migrationProject('sqlite');
  const file = path.join(project.root, 'kept', 'test.db');
  const read = <T>(work: (db: Database.Database) => T): T => {
    const db = new Database(file);
    try {
      return work(db);
    } finally {
      db.close();
    }
  };
  const tables = () => read((db) => db.prepare<[], { name: string }>("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all().map((row) => row.name));
  return { ...project, file, url: `file:${file}`, read, tables };
}

describe('migrating a SQLite file', () => {
  it('makes the tables, for the owner only, and finds nothing to do the second time', async () => {
    const { root, url, file, tables, read } = newDatabase();
    expect(await migrate(url, root)).toEqual({ ok: true, applied: WRITTEN });
    expect(tables()).toEqual(expect.arrayContaining(['Installation', '_prisma_migrations']));
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(read((db) => db.pragma('journal_mode', { simple: true }))).toBe('wal');
    expect(await migrate(url, root)).toEqual({ ok: true, applied: [] });
  });

  it('refuses when an applied file was changed', async () => {
    const { root, url, fileOf } = newDatabase();
    await migrate(url, root);
    appendFileSync(fileOf(FIRST), '-- a later thought\n');
    expect(await migrate(url, root)).toEqual({ ok: false, refusal: { kind: 'changed', migration: FIRST } });
  });

  it('refuses a database that a newer version has migrated, and leaves it alone', async () => {
    const newer = newDatabase();
    newer.add('29990101000000_from_the_future', 'CREATE TABLE "Future" (id TEXT PRIMARY KEY);');
    await migrate(newer.url, newer.root);
    const older = migrationProject('sqlite');
    older.add('20990101000000_pending', 'CREATE TABLE "Pending" (id TEXT PRIMARY KEY);');
    const result = await migrate(newer.url, older.root);
    expect(result).toEqual({ ok: false, refusal: { kind: 'unknown', migration: '29990101000000_from_the_future' } });
    expect(newer.tables()).not.toContain('Pending');
  });

  it('takes everything back when one statement fails, the good migrations before it too', async () => {
    const { root, url, add, tables } = newDatabase();
    add('29990101000000_good', 'CREATE TABLE "Good" (id TEXT PRIMARY KEY);');
    add('29990102000000_bad', 'CREATE TABLE "HalfWay" (id TEXT PRIMARY KEY);\nINSERT INTO "Nowhere" VALUES (1);');
    const result = await migrate(url, root);
    expect(result).toMatchObject({ ok: false, refusal: { kind: 'sql-failed', migration: '29990102000000_bad' } });
    expect(tables()).toEqual([]);
  });

  it('takes everything back when rows would point to nothing', async () => {
    const { root, url, add, tables } = newDatabase();
    add('29990101000000_broken', [
      'CREATE TABLE "Parent" (id TEXT PRIMARY KEY);',
      'CREATE TABLE "Child" (parent TEXT REFERENCES "Parent" (id));',
      `INSERT INTO "Child" VALUES ('nobody');`,
    ].join('\n'));
    expect(await migrate(url, root)).toMatchObject({ ok: false, refusal: { kind: 'foreign-keys-broken' } });
    expect(tables()).toEqual([]);
  });

  it('throws when a migration ends the transaction it runs in', async () => {
    const { root, url, add } = newDatabase();
    add('29990101000000_commits', 'COMMIT;');
    await expect(migrate(url, root)).rejects.toThrow('ends the transaction');
  });

  it('applies once when four start at the same time', async () => {
    const { root, url, read } = newDatabase();
    const applied = await migrateAtOnce(4, url, root);
    expect(applied.filter((names) => names.length > 0)).toEqual([WRITTEN]);
    expect(read((db) => db.prepare('SELECT COUNT(*) FROM "_prisma_migrations"').pluck().get())).toBe(WRITTEN.length);
  });
});

describe('migrate', () => {
  it('throws for an address of neither engine', async () => {
    await expect(migrate('mysql://somewhere', process.cwd())).rejects.toThrow('file: or postgresql://');
  });
});
