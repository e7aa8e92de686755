/** @typedef {{ passed: number, failed: number, skipped: number }} Tally */
/** @typedef {Tally & { excerpt: string[] }} Outcome a tally with what to show of the failures */

/** @type {Outcome} */
export const ONE_PASSED = { passed: 1, failed: 0, skipped: 0, excerpt: [] };

/**
 * Returns the outcome of a step that failed as a whole.
 * @param {string[]} excerpt
 * @returns {Outcome}
 */
export function oneFailed(excerpt) {
  return { passed: 0, failed: 1, skipped: 0, excerpt };
}

/**
 * Returns the outcome of a step that cannot be done here, with the reason.
 * @param {string} reason
 * @returns {Outcome}
 */
export function oneSkipped(reason) {
  return { passed: 0, failed: 0, skipped: 1, excerpt: [reason] };
}

/**
 * @param {readonly Tally[]} tallies
 * @returns {Tally}
 */
export function sum(tallies) {
  const total = { passed: 0, failed: 0, skipped: 0 };
  for (const tally of tallies) {
    total.passed += tally.passed;
    total.failed += tally.failed;
    total.skipped += tally.skipped;
  }
  return total;
}

/**
 * Returns the last line of `npm test`, such as `120 passed, 0 failed` or `120 passed, 1 failed, 2 skipped`.
 * @param {Tally} tally
 */
export function summaryLine({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
