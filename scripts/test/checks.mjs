import path from 'node:path';
import { runChild } from '../start/children.mjs';
import { lastLines } from '../start/log.mjs';
import { ONE_PASSED, oneFailed } from './tally.mjs';

/** The lines shown of a check that failed. */
const EXCERPT_LINES = 40;

/**
 * Returns a step that runs commands one after the other and fails with the first that fails.
 * @param {readonly (readonly [script: string, ...args: string[]])[]} commands scripts below node_modules, with arguments
 * @returns {import('./steps.mjs').Step['run']}
 */
export function runChecks(commands) {
  return async ({ root, log }) => {
    for (const [script, ...args] of commands) {
      const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' };
      const result = await runChild(process.execPath, [path.join(root, 'node_modules', script), ...args], { cwd: root, env, log });
      if (!result.ok) return oneFailed(lastLines(result.output, EXCERPT_LINES));
    }
    return ONE_PASSED;
  };
}
