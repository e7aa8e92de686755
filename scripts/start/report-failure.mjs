import { failureInWords } from './failure-in-words.mjs';
import { lastLines } from './log.mjs';

/**
 * Prints what is wrong in words, the last lines of the failed step and where the whole log is.
 * @param {string} what the step, as in `Building failed`
 * @param {{ output: string, reason?: string }} failure
 * @param {string} logFile
 */
export function reportFailure(what, { output, reason }, logFile) {
  const words = reason ?? failureInWords(output);
  const lines = lastLines(output);
  console.error(`\n${what} failed.`);
  if (words) console.error(words);
  if (lines.length > 0) console.error(`\nThe last lines were:\n${lines.map((line) => `  | ${line}`).join('\n')}`);
  console.error(`\nThe whole log: ${logFile}`);
}
