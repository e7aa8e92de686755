import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Migration } from './migration';

/** Returns the migrations of a folder in the order of their names, which begin with the time they were written. */
export function readMigrations(folder: string): Migration[] {
  const names = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return names.sort().map((name) => {
    const sql = readFileSync(path.join(folder, name, 'migration.sql'), 'utf8');
    return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
  });
}
