import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';

/** What SQLite keeps beside its file. Left beside another file they would spoil it. */
const BESIDE = ['-wal', '-shm', '-journal'];

/**
 * Says why a file cannot be put in the place of the database, or nothing when it can.
 * @param {string} file
 * @returns {string | undefined}
 */
export function whyNotRestore(file) {
  if (!existsSync(file)) return `There is no file ${file}.`;
  try {
    const db = new Database(file, { readonly: true, fileMustExist: true });
    try {
      const tables = db.prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name IN ('Installation', 'School')").all();
      if (tables.length !== 2) return `${file} is an SQLite file, but none of this program.`;
      const found = db.pragma('integrity_check', { simple: true });
      return found === 'ok' ? undefined : `${file} is damaged: ${String(found)}.`;
    } finally {
      db.close();
    }
  } catch (error) {
    return `${file} cannot be read as a database: ${error instanceof Error ? error.message : String(error)}.`;
  }
}

/**
 * Puts a copy of a backup in the place of the database. The database that stood there goes into a folder beside it, whole,
 * so that nothing is lost by restoring the wrong file.
 * @param {{ from: string, to: string, now: Date }} what `from` is the backup, `to` the file of the database
 * @returns {{ ok: true, keptIn: string | undefined } | { ok: false, reason: string }}
 */
export function restoreFile({ from, to, now }) {
  const reason = whyNotRestore(from);
  if (reason !== undefined) return { ok: false, reason };
  if (path.resolve(from) === path.resolve(to)) return { ok: false, reason: 'This is the database itself.' };
  // First beside it, on the same disk: the change of names that follows cannot stop half-way.
  const arriving = `${to}.restoring`;
  mkdirSync(path.dirname(to), { recursive: true, mode: 0o700 });
  rmSync(arriving, { force: true });
  copyFileSync(from, arriving);
  const keptIn = putAside(to, now);
  renameSync(arriving, to);
  return { ok: true, keptIn };
}

/**
 * @param {string} file
 * @param {Date} now
 */
function putAside(file, now) {
  const present = ['', ...BESIDE].map((end) => file + end).filter((one) => existsSync(one));
  if (present.length === 0) return undefined;
  const folder = path.join(path.dirname(file), `before-restore-${now.toISOString().replace(/\D/g, '').slice(0, 14)}`);
  mkdirSync(folder, { mode: 0o700 });
  for (const one of present) renameSync(one, path.join(folder, path.basename(one)));
  return folder;
}
