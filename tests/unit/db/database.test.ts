import path from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { readDatabaseState } from '@/lib/db/database-state';
import { getInstallation, recordStart } from '@/lib/db/installation';
import { migrate } from '@/lib/db/migrate/migrate';
import { temporaryFolder } from '@/tests/support/temporary-folder';

function openFile(file: string) {
  const db = openDatabase(`file:${file}`);
  onTestFinished(() => db.$disconnect());
  return db;
}

describe('the state of a database', () => {
  it('is not prepared while its tables are missing, and while the program was never started on it', async () => {
    const file = path.join(temporaryFolder(), 'new.db');
    expect(await readDatabaseState(openFile(file))).toEqual({ database: 'not-prepared' });
    await migrate(`file:${file}`, process.cwd());
    expect(await readDatabaseState(openFile(file))).toEqual({ database: 'not-prepared' });
  });

  it('is ready after a start, with the number of applied migrations', async () => {
    const file = path.join(temporaryFolder(), 'ready.db');
    await migrate(`file:${file}`, process.cwd());
    const db = openFile(file);
    await recordStart(db, { version: '0.1.0', at: new Date('2026-11-25T12:00:00.000Z') });
    const state = await readDatabaseState(db);
    expect(state).toMatchObject({ database: 'ready', installation: { createdByVersion: '0.1.0' } });
    expect(state.database === 'ready' && state.migrations).toBeGreaterThanOrEqual(1);
  });

  it('is unreachable when its folder does not exist, and keeps the cause', async () => {
    const state = await readDatabaseState(openFile(path.join(temporaryFolder(), 'nowhere', 'x.db')));
    expect(state).toMatchObject({ database: 'unreachable' });
    expect(state.database === 'unreachable' && String(state.cause)).toContain('directory does not exist');
  });
});

describe('a start', () => {
  it('keeps the version that made the database and moves the time of the last start', async () => {
    const file = path.join(temporaryFolder(), 'starts.db');
    await migrate(`file:${file}`, process.cwd());
    const db = openFile(file);
    const first = new Date('2026-11-25T12:00:00.000Z');
    const second = new Date('2026-11-26T12:00:00.000Z');
    await recordStart(db, { version: '0.1.0', at: first });
    await recordStart(db, { version: '0.2.0', at: second });
    expect(await getInstallation(db)).toEqual({ createdAt: first, createdByVersion: '0.1.0', lastStartedAt: second });
  });

  it('makes one row when several start at once', async () => {
    const file = path.join(temporaryFolder(), 'many.db');
    await migrate(`file:${file}`, process.cwd());
    const db = openFile(file);
    const at = new Date('2026-11-25T12:00:00.000Z');
    await Promise.all(Array.from({ length: 5 }, () => recordStart(db, { version: '0.1.0', at })));
    expect(await db.installation.count()).toBe(1);
  });
});

describe('openDatabase', () => {
  it('throws for an address of neither engine', () => {
    expect(() => openDatabase('mysql://somewhere')).toThrow('file: or postgresql://');
  });
});
