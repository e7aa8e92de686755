import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { beginLog } from '../start/log.mjs';
import { elapsed } from '../start/progress.mjs';
import { stopOnSignals } from '../start/signals.mjs';
import { ROUNDS } from './steps.mjs';
import { oneFailed, sum, summaryLine } from './tally.mjs';

/** @typedef {import('./tally.mjs').Outcome} Outcome */

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..', '..');
/** Exit code after Ctrl-C: what shells give an interrupted program. */
const INTERRUPTED = 130;

/** Runs every step, goes on after one that fails, and prints the summary as the last line. */
export async function main() {
  stopOnSignals({ exitCode: INTERRUPTED });
  const log = beginLog(path.join(root, 'data', 'logs', 'test.log'));
  /** @type {Map<string, Outcome>} */
  const outcomes = new Map();
  const runLane = async (/** @type {readonly import('./steps.mjs').Step[]} */ steps) => {
    for (const step of steps) {
      const begun = Date.now();
      const failedNeed = step.needs?.find((title) => outcomes.get(title)?.failed !== 0);
      const outcome = failedNeed ? oneFailed([`Not run, because this failed: ${failedNeed}`]) : await attempt(() => step.run({ root, log }));
      outcomes.set(step.title, outcome);
      report(step.title, outcome, elapsed(begun));
    }
  };
  for (const lanes of ROUNDS) await Promise.all(lanes.map(runLane));
  const total = sum([...outcomes.values()]);
  if (total.failed > 0) console.log(`The whole log: ${log.file}`);
  console.log(summaryLine(total));
  process.exitCode = total.failed === 0 ? 0 : 1;
}

/**
 * A fault of a step's own script fails that step and not the whole run.
 * @param {() => Promise<Outcome>} run
 * @returns {Promise<Outcome>}
 */
async function attempt(run) {
  try {
    return await run();
  } catch (error) {
    return oneFailed([error instanceof Error ? (error.stack ?? error.message) : String(error)]);
  }
}

/**
 * @param {string} title
 * @param {Outcome} outcome
 * @param {string} time
 */
function report(title, outcome, time) {
  const many = outcome.passed + outcome.failed + outcome.skipped > 1;
  console.log(`${outcome.failed === 0 ? '✓' : '✗'} ${title} (${time})${many ? `: ${summaryLine(outcome)}` : ''}`);
  for (const line of outcome.excerpt) console.log(`    ${line}`);
}
