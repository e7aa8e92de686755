import { copyFileSync, existsSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { openDatabase } from '@/lib/db/client';
import { restoreFile, whyNotRestore } from '@/scripts/restore/restore-file.mjs';
import { databasesFor } from '@/tests/support/databases-for-tests';
import { incidentForTest } from '@/tests/support/incident-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';
import { temporaryFolder } from '@/tests/support/temporary-folder';

const NOW = new Date('2026-11-25T12:00:00Z');

describe('restoring a backup', () => {
  const newDatabase = databasesFor('sqlite');

  it('brings the school back as it was, with a log that holds, and keeps what stood there before', async () => {
    const { db, url } = await newDatabase();
    const file = url.slice('file:'.length);
    const { officer, scope } = await schoolForTest(db);
    await incidentForTest(db, officer);
    const backup = path.join(temporaryFolder(), 'copy.db');
    await new Database(file, { readonly: true }).backup(backup);
    await incidentForTest(db, officer);
    await db.$disconnect();
    // As a program leaves them that was ended by force.
    writeFileSync(`${file}-wal`, 'left behind');
    const restored = restoreFile({ from: backup, to: file, now: NOW });
    expect(restored.ok).toBe(true);
    const again = openDatabase(url);
    expect(await again.incident.count()).toBe(1);
    expect(await verifyLog(again, scope.schoolId)).toMatchObject({ ok: true });
    await again.$disconnect();
    expect(restored.ok ? readdirSync(restored.keptIn ?? '').sort() : []).toEqual(expect.arrayContaining([path.basename(file), `${path.basename(file)}-wal`]));
  });

  it('touches nothing for a file that is none of this program, is damaged or is not there', async () => {
    const folder = temporaryFolder();
    const { url } = await newDatabase();
    const file = url.slice('file:'.length);
    const [foreign, broken] = [path.join(folder, 'foreign.db'), path.join(folder, 'broken.db')];
    new Database(foreign).exec('CREATE TABLE things (id)').close();
    writeFileSync(broken, 'not a database at all, but long enough to look at'.repeat(20));
    for (const from of [foreign, broken, path.join(folder, 'none.db')]) expect(restoreFile({ from, to: file, now: NOW }).ok).toBe(false);
    expect(whyNotRestore(file)).toBeUndefined();
    expect(readdirSync(path.dirname(file)).filter((name) => name.startsWith('before-restore'))).toEqual([]);
  });

  it('works where no database stands yet', async () => {
    const { url } = await newDatabase();
    const to = path.join(temporaryFolder(), 'data', 'sandbucket.db');
    const from = path.join(temporaryFolder(), 'copy.db');
    copyFileSync(url.slice('file:'.length), from);
    expect(restoreFile({ from, to, now: NOW })).toEqual({ ok: true, keptIn: undefined });
    expect(existsSync(to)).toBe(true);
  });
});
