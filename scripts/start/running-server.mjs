import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @typedef {{ pid: number, address: string }} RunningServer */

/** @param {string} root */
const noteFile = (root) => path.join(root, 'data', 'running.json');

/**
 * Returns the server that another `npm start` of this very folder runs, if there is one. A second would build under the
 * first one's feet and share its SQLite file, which is made for one server. A note left by a crash is not believed:
 * its process must live and its address answer.
 * @param {string} root
 * @param {(address: string) => Promise<boolean>} answers
 * @returns {Promise<RunningServer | undefined>}
 */
export async function findRunningServer(root, answers) {
  const file = noteFile(root);
  if (!existsSync(file)) return undefined;
  const noted = parseNote(readFileSync(file, 'utf8'));
  return noted && isAlive(noted.pid) && (await answers(noted.address)) ? noted : undefined;
}

/**
 * @param {string} root
 * @param {RunningServer} server
 */
export function noteRunningServer(root, server) {
  writeFileSync(noteFile(root), JSON.stringify(server), { mode: 0o600 });
}

/**
 * Takes the note back, if it is of this process.
 * @param {string} root
 */
export function forgetRunningServer(root) {
  const file = noteFile(root);
  if (existsSync(file) && parseNote(readFileSync(file, 'utf8'))?.pid === process.pid) rmSync(file);
}

/**
 * @param {string} text
 * @returns {RunningServer | undefined} undefined for a file cut short by a crash
 */
function parseNote(text) {
  const found = /^\{"pid":(\d+),"address":"([^"]+)"\}$/.exec(text);
  return found ? { pid: Number(found[1]), address: String(found[2]) } : undefined;
}

/** @param {number} pid */
function isAlive(pid) {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // A process of another account exists but may not be signalled.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
