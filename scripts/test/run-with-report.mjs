import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { runChild } from '../start/children.mjs';
import { lastLines } from '../start/log.mjs';
import { oneFailed } from './tally.mjs';

/** @typedef {import('./tally.mjs').Outcome} Outcome */

/**
 * @typedef {object} Runner
 * @property {string} name of the test runner
 * @property {(reportFile: string) => string[]} args for Node
 * @property {(reportFile: string) => NodeJS.ProcessEnv} env
 * @property {(report: string) => Outcome} outcome reads the report, which is JSON
 */

/**
 * Runs a test runner that writes a report, and counts the report.
 * @param {import('../start/install.mjs').Workplace} place
 * @param {Runner} runner
 * @returns {Promise<Outcome>}
 */
export async function runWithReport({ root, log }, { name, args, env, outcome }) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-report-'));
  const file = path.join(folder, 'report.json');
  const remove = () => rmSync(folder, { recursive: true, force: true });
  // Also when everything is stopped and this function never goes on.
  process.once('exit', remove);
  try {
    const run = await runChild(process.execPath, args(file), { cwd: root, env: env(file), log });
    if (!existsSync(file)) return oneFailed([`${name} ended without a report.`, ...lastLines(run.output)]);
    return agreeing(outcome(readFileSync(file, 'utf8')), run);
  } finally {
    remove();
  }
}

/**
 * Adds a failure when the runner says it failed and its report names none, and when there was no test at all.
 * @param {Outcome} outcome
 * @param {{ ok: boolean, output: string }} run
 * @returns {Outcome}
 */
export function agreeing(outcome, run) {
  const explained = run.ok || outcome.failed > 0;
  if (explained && outcome.passed + outcome.failed > 0) return outcome;
  return { ...outcome, failed: outcome.failed + 1, excerpt: [...outcome.excerpt, ...lastLines(run.output)] };
}
