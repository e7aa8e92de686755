import { createHmac } from 'node:crypto';
import { existsSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { runChild } from './children.mjs';
import { prepareDatabase } from './database.mjs';
import { DEMO_PEOPLE } from './demo-people.mjs';

/** Without letters and digits that look alike. */
const SIGNS = 'abcdefghjkmnpqrstuvwxyz23456789';

/** @param {string} root */
const demoFile = (root) => path.join(root, 'data', 'demo.db');

/**
 * Returns the address of the demo's own database. It is never the one of a school, whatever DATABASE_URL says.
 * @param {string} root
 */
export function demoDatabaseUrl(root) {
  return `file:${demoFile(root)}`;
}

/**
 * Returns the password of everybody in the demo school: another one in each installation, the same at every start, so
 * that a demo that is open to a network is not open to whoever has read this file. About 59 bits.
 * @param {string} secret of the installation
 */
export function demoPassword(secret) {
  const bytes = createHmac('sha256', secret).update('sandbucket demo password').digest().subarray(0, 12);
  const signs = Array.from(bytes, (byte) => SIGNS[byte % SIGNS.length]).join('');
  return `sand-${signs.slice(0, 4)}-${signs.slice(4, 8)}-${signs.slice(8)}`;
}

/**
 * Makes the demo school, unless it is there: into a file beside, which takes its name only when it is whole.
 * @param {import('./install.mjs').Workplace & { secret: string, address: string }} place
 * @returns {Promise<import('./install.mjs').StepResult>}
 */
export async function makeDemo({ root, log, secret, address }) {
  if (existsSync(demoFile(root))) return { ok: true };
  const unfinished = `${demoFile(root)}.part`;
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(unfinished + end, { force: true });
  const url = `file:${unfinished}`;
  const prepared = await prepareDatabase({ root, log, url });
  if (!prepared.ok) return prepared;
  const run = await runChild(process.execPath, ['--import', 'tsx', path.join('scripts', 'load-demo.ts')], { cwd: root, env: { ...process.env, ...demoEnvironment({ root, url, secret, address }) }, log });
  if (!run.ok) return { ok: false, output: run.output };
  renameSync(unfinished, demoFile(root));
  return { ok: true };
}

/**
 * Returns what the loading script is told. Its own settings of TypeScript stand in for the guard `server-only`, which
 * refuses to be loaded outside of a server.
 * @param {{ root: string, url: string, secret: string, address: string }} place
 */
export function demoEnvironment({ root, url, secret, address }) {
  return {
    DATABASE_URL: url, BETTER_AUTH_SECRET: secret, DEMO_PASSWORD: demoPassword(secret), DEMO_ADDRESS: address,
    TSX_TSCONFIG_PATH: path.join(root, 'scripts', 'demo', 'tsconfig.json'),
  };
}

/**
 * Returns what is printed about the demo: who is there, and how to sign in.
 * @param {string} secret
 */
export function demoSignIns(secret) {
  const widest = Math.max(...DEMO_PEOPLE.map(({ email }) => email.length));
  const lines = DEMO_PEOPLE.map(({ role, name, email }) => `  ${email.padEnd(widest)}  ${name}, ${role.replace('-', ' ')}`);
  return `
This is the demo: a school of our own invention, in its own file data/demo.db. Nobody in it is real, and nothing in it
is advice. Delete that file to begin it anew.

${lines.join('\n')}
  password of all of them: ${demoPassword(secret)}
`;
}
