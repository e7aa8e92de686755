import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readTable, SCHOOL_TABLES } from '@/lib/db/export/school-tables';
import { zipStream, type ZipEntry } from '@/lib/server/export/zip-stream';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { incidentForTest, packRowForTest } from '@/tests/support/incident-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

/** Every model that carries schoolId, out of the models themselves. */
function modelsOfSchool(): readonly string[] {
  const folder = path.join('prisma', 'models');
  const text = readdirSync(folder).map((file) => readFileSync(path.join(folder, file), 'utf8')).join('\n');
  return [...text.matchAll(/^model (\w+) \{\n(.*?)^\}/gms)].filter(([, , body]) => /^ {2}schoolId /m.test(body ?? '')).map(([, name]) => String(name));
}

it('a new table of a school is a table of the export', () => {
  expect([...SCHOOL_TABLES].sort()).toEqual([...modelsOfSchool()].sort());
});

describe.each(ENGINES_HERE)('the export on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  it('holds the rows of one school alone, in every table, and no secret', async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    await packRowForTest(db, theirs.scope, 'THEIRS-1');
    await packRowForTest(db, ours.scope, 'OURS-1');
    await incidentForTest(db, ours.officer, { packs: [{ label: 'OURS-1', part: 'involved' }] });
    const all = JSON.stringify(await Promise.all(SCHOOL_TABLES.map((table) => readTable(db, ours.scope, table))));
    expect(all).toContain('OURS-1');
    expect(all).not.toContain('THEIRS-1');
    expect(all).not.toContain(theirs.scope.schoolId);
    expect(all).not.toMatch(/tokenSeal|sealedKey|"password"/);
  });
});

describe('the archive', () => {
  async function* entries(): AsyncGenerator<ZipEntry> {
    yield { name: 'a/one.txt', bytes: new TextEncoder().encode('sand '.repeat(500)) };
    yield await Promise.resolve({ name: 'two.pdf', bytes: new Uint8Array([1, 2, 3]), packed: true });
  }

  it('can be opened, with every entry as it was', async () => {
    const unpacked = unzipSync(new Uint8Array(await new Response(zipStream(entries())).arrayBuffer()));
    expect(Object.keys(unpacked)).toEqual(['a/one.txt', 'two.pdf']);
    expect(new TextDecoder().decode(unpacked['a/one.txt'])).toBe('sand '.repeat(500));
    expect([...(unpacked['two.pdf'] ?? [])]).toEqual([1, 2, 3]);
  });

  it('fails as a whole when an entry cannot be made', async () => {
    async function* broken(): AsyncGenerator<ZipEntry> {
      yield* entries();
      throw await Promise.resolve(new Error('the disk is gone'));
    }
    await expect(new Response(zipStream(broken())).arrayBuffer()).rejects.toThrow('the disk is gone');
  });
});
