/**
 * @typedef {object} VitestReport the parts that are read of vitest's JSON report
 * @property {boolean} success
 * @property {{ name: string, status: string, message: string, assertionResults: { fullName: string, status: string, failureMessages: string[] | null }[] }[]} testResults
 */

const LINES_PER_FAILURE = 12;

/**
 * Counts a report of vitest. A file that could not be run counts as one failure, and so does an error outside of every
 * test: vitest then says no success without naming a test.
 * @param {VitestReport} report
 * @param {string} root project folder, left out of the excerpt
 * @returns {import('./tally.mjs').Outcome}
 */
export function vitestOutcome(report, root) {
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const count = (/** @type {string[]} */ statuses) => tests.filter((test) => statuses.includes(test.status)).length;
  const brokenFiles = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.every((test) => test.status !== 'failed'));
  const failed = count(['failed']) + brokenFiles.length;
  const unnamed = !report.success && failed === 0;
  const excerpt = [
    ...tests.filter((test) => test.status === 'failed').flatMap((test) => [test.fullName, ...lines(test.failureMessages?.join('\n') ?? '')]),
    ...brokenFiles.flatMap((file) => [`${file.name} could not be run`, ...lines(file.message)]),
    ...(unnamed ? ['An error happened outside of every test; the log names it.'] : []),
  ];
  return {
    passed: count(['passed']),
    failed: failed + (unnamed ? 1 : 0),
    skipped: count(['skipped', 'pending', 'todo', 'disabled']),
    excerpt: excerpt.map((line) => line.replaceAll(`${root}/`, '')),
  };
}

/** @param {string} text */
function lines(text) {
  return text.split('\n').slice(0, LINES_PER_FAILURE).map((line) => `  ${line}`);
}
