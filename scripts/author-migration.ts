// Writes the migration that leads from the written ones to the models, for both engines, without Prisma's native engine.
// usage: npm run db:author -- add_something
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { DatabaseEngine } from '@/lib/db/database-url';
import { pendingSql } from './author/pending-sql';
import { findPostgresql, startTemporaryPostgresql } from './author/temporary-postgresql';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

async function sqliteSql(): Promise<string> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-author-'));
  try {
    return await pendingSql(`file:${path.join(folder, 'author.db')}`, root);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function postgresqlSql(binaries: string): Promise<string> {
  const server = await startTemporaryPostgresql(binaries);
  try {
    return await pendingSql(server.url, root);
  } finally {
    await server.stop();
  }
}

function write(engine: DatabaseEngine, folder: string, sql: string): void {
  const migrations = path.join(root, 'prisma', engine, 'migrations');
  writeFileSync(path.join(migrations, 'migration_lock.toml'), `# Read by Prisma's own commands.\nprovider = "${engine}"\n`);
  if (sql === '') return console.log(`${engine}: the models have not changed.`);
  mkdirSync(path.join(migrations, folder));
  writeFileSync(path.join(migrations, folder, 'migration.sql'), sql);
  console.log(`${engine}: wrote prisma/${engine}/migrations/${folder}. Read it before you commit it.`);
}

async function author(name: string | undefined): Promise<number> {
  const binaries = findPostgresql();
  if (!name || !/^[a-z0-9_]+$/.test(name)) {
    console.error('Name the change in small letters, digits and underscores: npm run db:author -- add_something');
    return 2;
  }
  if (!binaries) {
    console.error('PostgreSQL is not installed here, and its migration can only be written with it: apt-get install postgresql');
    return 1;
  }
  const sql = { sqlite: await sqliteSql(), postgresql: await postgresqlSql(binaries) };
  const folder = `${new Date().toISOString().replace(/\D/g, '').slice(0, 14)}_${name}`;
  write('sqlite', folder, sql.sqlite);
  write('postgresql', folder, sql.postgresql);
  return 0;
}

process.exitCode = await author(process.argv[2]);
