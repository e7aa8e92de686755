import type { Migration, RecordedMigration, Refusal } from './migration';

export type Plan = { ok: true; pending: Migration[] } | { ok: false; refusal: Refusal };

/**
 * Returns the migrations still to be applied, in order. Refuses when an earlier run failed half-way, when an applied
 * file was changed since, and when the database holds a migration these files do not know (it is of a newer version).
 */
export function planMigrations(files: readonly Migration[], recorded: readonly RecordedMigration[]): Plan {
  const unfinished = recorded.find((row) => !row.finished_at && !row.rolled_back_at);
  if (unfinished) return { ok: false, refusal: { kind: 'failed-earlier', migration: unfinished.migration_name } };

  const applied = recorded.filter((row) => row.finished_at && !row.rolled_back_at);
  const fileByName = new Map(files.map((file) => [file.name, file]));
  for (const row of applied) {
    const file = fileByName.get(row.migration_name);
    if (!file) return { ok: false, refusal: { kind: 'unknown', migration: row.migration_name } };
    if (file.checksum !== row.checksum) return { ok: false, refusal: { kind: 'changed', migration: row.migration_name } };
  }
  const done = new Set(applied.map((row) => row.migration_name));
  return { ok: true, pending: files.filter((file) => !done.has(file.name)) };
}
