import { randomUUID } from 'node:crypto';
import { closeSync, mkdirSync, openSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import type { MigrateResult, Migration, RecordedMigration, Refusal } from './migration';
import { planMigrations } from './plan-migrations';

/** Another start may be migrating the same file; it gets this long, ms. */
const BUSY_TIMEOUT_MS = 30_000;

/** Prisma's own table, to the letter, so that its tools read the same history. */
const HISTORY_TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    TEXT PRIMARY KEY NOT NULL,
    "checksum"              TEXT NOT NULL,
    "finished_at"           DATETIME,
    "migration_name"        TEXT NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        DATETIME,
    "started_at"            DATETIME NOT NULL DEFAULT current_timestamp,
    "applied_steps_count"   INTEGER UNSIGNED NOT NULL DEFAULT 0
)`;
const RECORD = `INSERT INTO "_prisma_migrations"
  (id, checksum, started_at, finished_at, migration_name, applied_steps_count) VALUES (?, ?, ?, ?, ?, 1)`;

/** Applies what is pending to a SQLite file, all in one transaction: afterwards either all of it is there or none. */
export function migrateSqlite(file: string, migrations: readonly Migration[]): MigrateResult {
  createPrivateFile(file);
  const db = new Database(file, { timeout: BUSY_TIMEOUT_MS });
  try {
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    // Rebuilding a table drops the old one. This setting is ignored inside a transaction, so it comes before it.
    db.pragma('foreign_keys = OFF');
    db.exec('BEGIN IMMEDIATE');
    const result = applyPending(db, migrations);
    if (db.inTransaction) db.exec(result.ok ? 'COMMIT' : 'ROLLBACK');
    return result;
  } finally {
    // Closing takes back a transaction that an exception left open.
    db.close();
  }
}

function applyPending(db: Database.Database, migrations: readonly Migration[]): MigrateResult {
  db.exec(HISTORY_TABLE);
  const recorded = db.prepare<[], RecordedMigration>('SELECT * FROM "_prisma_migrations"').all();
  const plan = planMigrations(migrations, recorded);
  if (!plan.ok) return plan;
  for (const migration of plan.pending) {
    const refusal = applyOne(db, migration);
    if (refusal) return { ok: false, refusal };
  }
  const broken = db.pragma('foreign_key_check');
  if (Array.isArray(broken) && broken.length > 0) {
    return { ok: false, refusal: { kind: 'foreign-keys-broken', message: JSON.stringify(broken.slice(0, 5)) } };
  }
  return { ok: true, applied: plan.pending.map((migration) => migration.name) };
}

function applyOne(db: Database.Database, migration: Migration): Refusal | undefined {
  const startedAt = Date.now();
  try {
    db.exec(migration.sql);
  } catch (error) {
    return { kind: 'sql-failed', migration: migration.name, message: error instanceof Error ? error.message : String(error) };
  }
  if (!db.inTransaction) throw new Error(`Migration ${migration.name} ends the transaction it runs in`);
  db.prepare(RECORD).run(randomUUID(), migration.checksum, startedAt, Date.now(), migration.name);
  return undefined;
}

/** Makes folder and file readable by their owner only. SQLite gives its side files the rights of the main one. */
function createPrivateFile(file: string): void {
  mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
  closeSync(openSync(file, 'a', 0o600));
}
