import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { PrismaPg } from '@prisma/adapter-pg';
import { engineOfUrl } from '@/lib/db/database-url';
import { migrate } from '@/lib/db/migrate/migrate';
import { refusalInWords } from '@/lib/db/migrate/refusal-in-words';
import { composeSchema } from '../prisma/compose-schema.mjs';
import { createAuthorPool } from './author-pool';
import { sqlTowardsSchema } from './schema-engine';

/**
 * Returns the SQL that is missing between the written migrations and the models; an empty string when nothing is.
 * @param url a throw-away, empty database: the written migrations are applied to it first
 */
export async function pendingSql(url: string, root: string): Promise<string> {
  const history = await migrate(url, root);
  if (!history.ok) throw new Error(refusalInWords(history.refusal));
  if (engineOfUrl(url) === 'sqlite') return sqlTowardsSchema(new PrismaBetterSqlite3({ url }), composeSchema(root, 'sqlite'));
  const pool = createAuthorPool(url);
  try {
    return await sqlTowardsSchema(new PrismaPg(pool), composeSchema(root, 'postgresql'));
  } finally {
    await pool.end();
  }
}
