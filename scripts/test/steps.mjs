import { build, generateClients } from '../start/build.mjs';
import { failureInWords } from '../start/failure-in-words.mjs';
import { installWhenNeeded } from '../start/install.mjs';
import { lastLines } from '../start/log.mjs';
import { runChecks } from './checks.mjs';
import { endToEndOnPostgresql } from './end-to-end-on-postgresql.mjs';
import { endToEndTests } from './end-to-end-tests.mjs';
import { bringSystemTools } from './system-tools.mjs';
import { ONE_PASSED, oneFailed } from './tally.mjs';
import { unitTests } from './unit-tests.mjs';

/** @typedef {import('../start/install.mjs').Workplace} Workplace */
/** @typedef {import('./tally.mjs').Outcome} Outcome */
/** @typedef {{ title: string, needs?: string[], run: (place: Workplace) => Promise<Outcome> }} Step */

/**
 * In the order they run. Lanes that stand side by side run at the same time: a check keeps one core busy, and the tests
 * keep all of them. A step does not run when one it needs has failed; it then counts as failed.
 * @type {readonly (readonly (readonly Step[])[])[]}
 */
export const ROUNDS = [
  [[
    { title: 'Packages', run: async (place) => fromResult(await installWhenNeeded(place)) },
    { title: 'Programs the tests call', run: bringSystemTools },
    { title: 'Database clients', needs: ['Packages'], run: async (place) => fromResult(await generateClients(place)) },
  ]],
  [
    [{ title: 'Lint', needs: ['Database clients'], run: runChecks([['eslint/bin/eslint.js', '.', '--max-warnings', '0']]) }],
    [
      // Next writes the types of its routes; without them a page's own types cannot be checked.
      { title: 'Types', needs: ['Database clients'], run: runChecks([['next/dist/bin/next', 'typegen'], ['typescript/bin/tsc', '--noEmit']]) },
      { title: 'Boundaries', needs: ['Database clients'], run: runChecks([['dependency-cruiser/bin/dependency-cruise.mjs', '.', '--config', '.dependency-cruiser.mjs']]) },
      { title: 'Dead code', needs: ['Database clients'], run: runChecks([['knip/bin/knip.js']]) },
      { title: 'Build', needs: ['Database clients'], run: async (place) => fromResult(await build(place)) },
    ],
  ],
  [[
    { title: 'Unit', needs: ['Database clients'], run: unitTests },
    { title: 'End to end', needs: ['Build'], run: (place) => endToEndTests(place) },
    { title: 'End to end on PostgreSQL', needs: ['Build'], run: endToEndOnPostgresql },
  ]],
];

/**
 * @param {import('../start/install.mjs').StepResult} result
 * @returns {Outcome}
 */
function fromResult(result) {
  if (result.ok) return ONE_PASSED;
  const words = result.reason ?? failureInWords(result.output);
  return oneFailed([...(words ? [words] : []), ...lastLines(result.output, 40)]);
}
