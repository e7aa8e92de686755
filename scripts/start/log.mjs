import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @typedef {{ file: string, write: (text: string) => void }} Log */

/**
 * Begins a log file anew. When it can no longer be written to (a full disk, say) the program goes on without: what is
 * shown after a failure comes from memory, and says that the file is not whole.
 * @param {string} file
 * @returns {Log}
 */
export function beginLog(file) {
  mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
  writeFileSync(file, '', { mode: 0o600 });
  let broken = false;
  const write = (/** @type {string} */ text) => {
    if (broken) return;
    try {
      appendFileSync(file, text);
    } catch (error) {
      broken = true;
      console.error(`The log ${file} is not whole: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  return { file, write };
}

/**
 * Returns the last lines of a text that hold something.
 * @param {string} text
 * @param {number} [count]
 */
export function lastLines(text, count = 15) {
  return text.split(/\r?\n/).filter((line) => line.trim() !== '').slice(-count);
}
