import { createInterface } from 'node:readline/promises';

/** Says whether a person sits at the terminal who can be asked. */
export function somebodyIsThere() {
  return Boolean(process.stdin.isTTY && process.stdout.isTTY && !process.env.CI);
}

/**
 * Asks at the terminal and returns the answer.
 * @param {string} question
 */
export async function ask(question) {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  // The terminal's reader keeps Ctrl-C to itself; the program has to hear of it.
  terminal.on('SIGINT', () => process.kill(process.pid, 'SIGINT'));
  try {
    return await terminal.question(question);
  } finally {
    terminal.close();
  }
}
