import { spawn, spawnSync } from 'node:child_process';
import { setTimeout as sleep } from 'node:timers/promises';

/** A child that does not end when asked is ended by force after this time. */
const GRACE_MS = 8000;
/** And this long is waited for that. */
const FORCED_MS = 3000;
/** As much of the output as is kept for the report of a failure, characters. */
const KEPT = 20_000;
const IS_WINDOWS = process.platform === 'win32';

/** @typedef {import('node:child_process').ChildProcess} ChildProcess */

/** @type {Set<ChildProcess>} */
const running = new Set();
let stopping = false;

// Whatever ends this program, an exception included, no child is left behind.
process.on('exit', () => running.forEach((child) => signalTree(child, 'SIGKILL')));

/**
 * Starts a program in a process group of its own, so that all it starts itself can be ended with it.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, onOutput: (text: string, stream: 'out' | 'err') => void, shell?: boolean }} options
 * @returns {ChildProcess}
 */
export function startChild(command, args, { cwd, env = process.env, onOutput, shell = false }) {
  const child = spawn(command, args, { cwd, env, shell, detached: !IS_WINDOWS, windowsHide: true, stdio: ['ignore', 'pipe', 'pipe'] });
  running.add(child);
  child.stdout.setEncoding('utf8').on('data', (text) => onOutput(text, 'out'));
  child.stderr.setEncoding('utf8').on('data', (text) => onOutput(text, 'err'));
  child.once('close', () => running.delete(child));
  child.once('error', () => running.delete(child));
  return child;
}

/**
 * Runs a program to its end. Never returns while everything is being stopped: the one who stops ends the program.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, log?: import('./log.mjs').Log, shell?: boolean }} options
 * @returns {Promise<{ ok: boolean, output: string }>} the end of what it printed
 */
export async function runChild(command, args, { log, ...options }) {
  let output = '';
  const onOutput = (/** @type {string} */ text) => {
    output = (output + text).slice(-KEPT);
    log?.write(text);
  };
  log?.write(`\n$ ${command} ${args.join(' ')}\n`);
  const child = startChild(command, args, { ...options, onOutput });
  const ok = await new Promise((resolve) => {
    child.once('close', (code) => resolve(code === 0));
    child.once('error', (error) => {
      onOutput(`${command}: ${error.message}\n`);
      resolve(false);
    });
  });
  await unlessStopping();
  return { ok, output };
}

/** Says whether everything is being stopped. */
export const isStopping = () => stopping;

/** Returns at once, or never while everything is being stopped: then a child that ended is no failure to report. */
export async function unlessStopping() {
  if (stopping) await new Promise(() => undefined);
}

/** Ends every child and all they started, and returns when they are gone. */
export async function stopChildren() {
  stopping = true;
  const children = [...running];
  children.forEach((child) => signalTree(child, 'SIGTERM'));
  const deadline = Date.now() + GRACE_MS;
  while (children.some(treeLives) && Date.now() < deadline) await sleep(50);
  children.filter(treeLives).forEach((child) => signalTree(child, 'SIGKILL'));
  // A process that hangs in the system, on a lost network drive say, goes when the system lets it.
  while (children.some(treeLives) && Date.now() < deadline + FORCED_MS) await sleep(20);
}

/** @param {ChildProcess} child */
function treeLives(child) {
  if (IS_WINDOWS) return running.has(child);
  return child.pid !== undefined && signal(-child.pid, 0);
}

/**
 * @param {ChildProcess} child
 * @param {'SIGTERM' | 'SIGKILL'} name
 */
function signalTree(child, name) {
  if (child.pid === undefined) return;
  if (IS_WINDOWS) spawnSync('taskkill', ['/pid', String(child.pid), '/T', '/F']);
  else signal(-child.pid, name);
}

/**
 * @param {number} target process, or process group when negative
 * @param {NodeJS.Signals | 0} name
 * @returns {boolean} whether the target exists
 */
function signal(target, name) {
  try {
    return process.kill(target, name);
  } catch (error) {
    // macOS says EPERM of a group in which all have ended and one is not yet fetched.
    if (error instanceof Error && 'code' in error && (error.code === 'ESRCH' || error.code === 'EPERM')) return false;
    throw error;
  }
}
