import { randomUUID } from 'node:crypto';
import pg from 'pg';
import type { MigrateResult, Migration, RecordedMigration, Refusal } from './migration';
import { planMigrations } from './plan-migrations';

/** The key Prisma's own engine locks, so that the two never migrate at the same time. */
const ADVISORY_LOCK = 72707369;

/** Prisma's own table, to the letter, so that its tools read the same history. */
const HISTORY_TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    id                      VARCHAR(36) PRIMARY KEY NOT NULL,
    checksum                VARCHAR(64) NOT NULL,
    finished_at             TIMESTAMPTZ,
    migration_name          VARCHAR(255) NOT NULL,
    logs                    TEXT,
    rolled_back_at          TIMESTAMPTZ,
    started_at              TIMESTAMPTZ NOT NULL DEFAULT now(),
    applied_steps_count     INTEGER NOT NULL DEFAULT 0
)`;
const RECORD = `INSERT INTO "_prisma_migrations"
  (id, checksum, started_at, finished_at, migration_name, applied_steps_count)
  VALUES ($1, $2, now(), clock_timestamp(), $3, 1)`;

/** Applies what is pending to a PostgreSQL database, all in one transaction: afterwards either all of it is there or none. */
export async function migratePostgresql(url: string, migrations: readonly Migration[]): Promise<MigrateResult> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('BEGIN');
    await client.query('SELECT pg_advisory_xact_lock($1)', [ADVISORY_LOCK]);
    const result = await applyPending(client, migrations);
    await client.query(result.ok ? 'COMMIT' : 'ROLLBACK');
    return result;
  } finally {
    // Ending the connection takes back a transaction that an exception left open.
    await client.end();
  }
}

async function applyPending(client: pg.Client, migrations: readonly Migration[]): Promise<MigrateResult> {
  await client.query(HISTORY_TABLE);
  const recorded = await client.query<RecordedMigration>('SELECT * FROM "_prisma_migrations"');
  const plan = planMigrations(migrations, recorded.rows);
  if (!plan.ok) return plan;
  for (const migration of plan.pending) {
    const refusal = await applyOne(client, migration);
    if (refusal) return { ok: false, refusal };
  }
  return { ok: true, applied: plan.pending.map((migration) => migration.name) };
}

async function applyOne(client: pg.Client, migration: Migration): Promise<Refusal | undefined> {
  try {
    await client.query(migration.sql);
  } catch (error) {
    return { kind: 'sql-failed', migration: migration.name, message: error instanceof Error ? error.message : String(error) };
  }
  await client.query(RECORD, [randomUUID(), migration.checksum, migration.name]);
  return undefined;
}
