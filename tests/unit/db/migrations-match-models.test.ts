import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { pendingSql } from '@/scripts/author/pending-sql';
import { temporaryFolder } from '@/tests/support/temporary-folder';

it('the SQLite migrations hold all that the models ask for: else run npm run db:author', async () => {
  expect(await pendingSql(`file:${path.join(temporaryFolder(), 'models.db')}`, process.cwd())).toBe('');
});

it('every migration is written for both engines', () => {
  const names = (engine: string) => readdirSync(`prisma/${engine}/migrations`);
  expect(names('sqlite').length).toBeGreaterThan(1);
  expect(names('postgresql')).toEqual(names('sqlite'));
});
