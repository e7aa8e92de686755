import path from 'node:path';
import { runChild } from './children.mjs';

/**
 * Returns the address of the database: the one that is set, else a file in data/.
 * @param {string} root
 */
export function databaseUrl(root) {
  return process.env.DATABASE_URL || `file:${path.join(root, 'data', 'sandbucket.db')}`;
}

/**
 * Brings the database to the version of the program and notes the start in it.
 * @param {import('./install.mjs').Workplace & { url: string }} place
 * @returns {Promise<import('./install.mjs').StepResult>}
 */
export async function prepareDatabase({ root, log, url }) {
  const script = path.join('scripts', 'prepare-database.ts');
  const run = await runChild(process.execPath, ['--import', 'tsx', script], { cwd: root, env: { ...process.env, DATABASE_URL: url }, log });
  return run.ok ? { ok: true } : { ok: false, output: run.output };
}
