import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { generateJobs } from '../prisma/generate.mjs';
import { runChild } from './children.mjs';
import { sourceFingerprint } from './fingerprint.mjs';

/** @typedef {import('./install.mjs').Workplace} Workplace */
/** @typedef {import('./install.mjs').StepResult} StepResult */

/**
 * Generates the database clients that are missing or out of date.
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
export async function generateClients({ root, log }) {
  for (const job of generateJobs(root)) {
    if (job.current) continue;
    const run = await runChild(process.execPath, job.command, { cwd: root, env: { ...process.env, ...job.env }, log });
    if (!run.ok) return { ok: false, output: run.output };
    job.markCurrent();
  }
  return { ok: true };
}

/** @param {string} root */
export const nextScript = (root) => path.join(root, 'node_modules', 'next', 'dist', 'bin', 'next');
/** @param {string} root */
const stampFile = (root) => path.join(root, '.next', 'sandbucket-sources');

/**
 * Says whether the built program is of the present sources.
 * @param {string} root
 */
export function isBuilt(root) {
  const complete = existsSync(path.join(root, '.next', 'BUILD_ID')) && existsSync(stampFile(root));
  return complete && readFileSync(stampFile(root), 'utf8') === sourceFingerprint(root);
}

/**
 * Builds the program. The fingerprint is taken before, so that an edit during the build leads to a new one.
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
export async function build({ root, log }) {
  const fingerprint = sourceFingerprint(root);
  rmSync(stampFile(root), { force: true });
  const env = { ...process.env, NODE_ENV: /** @type {const} */ ('production'), NEXT_TELEMETRY_DISABLED: '1' };
  const run = await runChild(process.execPath, [nextScript(root), 'build'], { cwd: root, env, log });
  if (!run.ok) return { ok: false, output: run.output };
  writeFileSync(stampFile(root), fingerprint);
  return { ok: true };
}
