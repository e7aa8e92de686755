import path from 'node:path';
import { nextFreePort, portState } from '../start/ports.mjs';
import { playwrightOutcome } from './playwright-report.mjs';
import { runWithReport } from './run-with-report.mjs';
import { oneFailed } from './tally.mjs';

/** Ports are looked for from here, away from those people use. */
const FIRST_PORT = 3210;

/**
 * Runs Playwright, all of it or the files that are named, and counts its report.
 * @param {import('../start/install.mjs').Workplace} place
 * @param {{ words?: readonly string[], env?: Readonly<Record<string, string>> }} [options] what Playwright is told beside the reporter
 * @returns {Promise<import('./tally.mjs').Outcome>}
 */
export async function endToEndTests(place, { words = [], env = {} } = {}) {
  const port = await nextFreePort(FIRST_PORT, (candidate) => portState(candidate, '127.0.0.1'));
  if (port === undefined) return oneFailed([`There is no free port after ${FIRST_PORT}.`]);
  const script = path.join(place.root, 'node_modules', '@playwright', 'test', 'cli.js');
  return runWithReport(place, {
    name: 'Playwright',
    args: () => [script, 'test', '--reporter=list,json', ...words],
    env: (file) => ({ ...process.env, ...env, E2E_PORT: String(port), PLAYWRIGHT_JSON_OUTPUT_FILE: file }),
    outcome: (report) => playwrightOutcome(JSON.parse(report)),
  });
}
