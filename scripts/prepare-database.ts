// Applies pending migrations and notes the start. Ends with exit code 1 and one sentence when the database is left alone.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import { openDatabase } from '@/lib/db/client';
import { recordStart } from '@/lib/db/installation';
import { migrate } from '@/lib/db/migrate/migrate';
import { refusalInWords } from '@/lib/db/migrate/refusal-in-words';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

async function prepareDatabase(url: string): Promise<number> {
  const result = await migrate(url, root);
  if (!result.ok) {
    console.error(refusalInWords(result.refusal));
    return 1;
  }
  const { version } = z.object({ version: z.string() }).parse(JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')));
  const db = openDatabase(url);
  try {
    await recordStart(db, { version, at: new Date() });
  } finally {
    await db.$disconnect();
  }
  console.log(result.applied.length === 0 ? 'The database was current.' : `Applied to the database: ${result.applied.join(', ')}.`);
  return 0;
}

process.exitCode = await prepareDatabase(process.env.DATABASE_URL ?? `file:${path.join(root, 'data', 'sandbucket.db')}`);
