/** @typedef {{ title: string, specs?: PlaywrightSpec[], suites?: PlaywrightSuite[] }} PlaywrightSuite */
/** @typedef {{ title: string, ok: boolean, tests: { results: { errors?: { message?: string }[] }[] }[] }} PlaywrightSpec */
/**
 * @typedef {object} PlaywrightReport the parts that are read of Playwright's JSON report
 * @property {{ expected: number, unexpected: number, flaky: number, skipped: number }} stats
 * @property {{ message?: string }[]} errors
 * @property {PlaywrightSuite[]} suites
 */

const LINES_PER_FAILURE = 14;
/** Playwright colours its messages. */
const COLOUR = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');

/**
 * Counts a report of Playwright. Errors outside of the tests (a file that does not load, a server that does not come
 * up) count as one failure each; a test that passed only when repeated counts as failed.
 * @param {PlaywrightReport} report
 * @returns {import('./tally.mjs').Outcome}
 */
export function playwrightOutcome({ stats, errors, suites }) {
  const failures = suites.flatMap((suite) => failedSpecs(suite, []));
  return {
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + errors.length,
    skipped: stats.skipped,
    excerpt: [
      ...failures.flatMap(({ title, spec }) => [title, ...spec.tests.flatMap((test) => test.results.flatMap((result) => messages(result.errors ?? [])))]),
      ...messages(errors),
    ],
  };
}

/**
 * @param {PlaywrightSuite} suite
 * @param {string[]} above titles of the suites around it
 * @returns {{ title: string, spec: PlaywrightSpec }[]}
 */
function failedSpecs(suite, above) {
  const titles = [...above, suite.title];
  const own = (suite.specs ?? []).filter((spec) => !spec.ok).map((spec) => ({ title: [...titles, spec.title].join(' › '), spec }));
  return [...own, ...(suite.suites ?? []).flatMap((inner) => failedSpecs(inner, titles))];
}

/** @param {{ message?: string }[]} errors */
function messages(errors) {
  return errors.flatMap(({ message = '' }) => message.replace(COLOUR, '').split('\n').slice(0, LINES_PER_FAILURE).map((line) => `  ${line}`));
}
