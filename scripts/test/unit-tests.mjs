import path from 'node:path';
import { runWithReport } from './run-with-report.mjs';
import { vitestOutcome } from './vitest-report.mjs';

/** @type {import('./steps.mjs').Step['run']} */
export function unitTests(place) {
  const script = path.join(place.root, 'node_modules', 'vitest', 'vitest.mjs');
  return runWithReport(place, {
    name: 'vitest',
    args: (file) => [script, 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    env: () => process.env,
    outcome: (report) => vitestOutcome(JSON.parse(report), place.root),
  });
}
