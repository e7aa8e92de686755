import { randomUUID } from 'node:crypto';
import { copyFileSync } from 'node:fs';
import path from 'node:path';
import { inject, onTestFinished } from 'vitest';
import { openDatabase, type Db } from '@/lib/db/client';
import type { DatabaseEngine } from '@/lib/db/database-url';
import type {} from './databases-global-setup';
import { newPostgresqlDatabase } from './postgresql-for-tests';
import { temporaryFolder } from './temporary-folder';

const { sqliteFile, postgresql } = inject('preparedDatabases');

/** The engines that can be had here; for `describe.each`. */
export const ENGINES_HERE: readonly DatabaseEngine[] = postgresql ? ['sqlite', 'postgresql'] : ['sqlite'];

export interface DatabaseForTest { readonly db: Db; readonly url: string }

/** Returns a function that makes a new database with all tables for the running test: a copy of one that was migrated once. */
export function databasesFor(engine: DatabaseEngine): () => Promise<DatabaseForTest> {
  return async () => {
    const url = engine === 'sqlite' ? copyOfFile() : await copyOfDatabase();
    const db = openDatabase(url);
    onTestFinished(() => db.$disconnect());
    return { db, url };
  };
}

function copyOfFile(): string {
  const file = path.join(temporaryFolder(), 'test.db');
  copyFileSync(sqliteFile, file);
  return `file:${file}`;
}

async function copyOfDatabase(): Promise<string> {
  if (!postgresql) throw new Error('PostgreSQL is not installed here');
  return newPostgresqlDatabase(postgresql.url, `test_${randomUUID().replaceAll('-', '')}`, postgresql.template);
}
