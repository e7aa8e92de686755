/** One folder below `prisma/<engine>/migrations`. */
export interface Migration {
  name: string;
  sql: string;
  /** SHA-256 of the file, hexadecimal: what Prisma's own engine records. */
  checksum: string;
}

/** A row of `_prisma_migrations`, as far as the plan needs it. Times are only looked at for being there. */
export interface RecordedMigration {
  migration_name: string;
  checksum: string;
  finished_at: unknown;
  rolled_back_at: unknown;
}

/** Why a database is left as it was. */
export type Refusal =
  | { kind: 'failed-earlier' | 'changed' | 'unknown'; migration: string }
  | { kind: 'sql-failed'; migration: string; message: string }
  | { kind: 'foreign-keys-broken'; message: string };

export type MigrateResult = { ok: true; applied: string[] } | { ok: false; refusal: Refusal };
