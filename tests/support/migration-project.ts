import { cpSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { DatabaseEngine } from '@/lib/db/database-url';
import { temporaryFolder } from './temporary-folder';

export interface MigrationProject {
  root: string;
  add: (name: string, sql: string) => void;
  fileOf: (name: string) => string;
}

/** Returns the names of the project's own migrations, in their order. */
export function writtenMigrations(engine: DatabaseEngine): [first: string, ...others: string[]] {
  const entries = readdirSync(path.join(process.cwd(), 'prisma', engine, 'migrations'), { withFileTypes: true });
  const [first, ...others] = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
  if (first === undefined) throw new Error(`There is no migration for ${engine}`);
  return [first, ...others];
}

/** Returns a folder with a copy of the project's own migrations, to which a test adds others. */
export function migrationProject(engine: DatabaseEngine): MigrationProject {
  const root = temporaryFolder();
  const migrations = path.join(root, 'prisma', engine, 'migrations');
  cpSync(path.join(process.cwd(), 'prisma', engine, 'migrations'), migrations, { recursive: true });
  const fileOf = (name: string) => path.join(migrations, name, 'migration.sql');
  const add = (name: string, sql: string) => {
    mkdirSync(path.dirname(fileOf(name)), { recursive: true });
    writeFileSync(fileOf(name), sql);
  };
  return { root, add, fileOf };
}
