import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { isOnlyThisMachine } from './ports.mjs';

/** @typedef {Record<'DATABASE_URL' | 'BETTER_AUTH_SECRET' | 'BETTER_AUTH_URL' | 'SANDBUCKET_SETUP_CODE', string>} ServerEnvironment */

/** Without letters and digits that look alike. */
const SIGNS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const GROUPS = 4;
const GROUP_LENGTH = 4;

/**
 * Returns what the server is told. A value that is set already goes before ours, so that an installation behind a
 * proxy can say its public address and keep its secret elsewhere.
 * @param {{ url: string, secret: string, address: string, host: string, set?: NodeJS.ProcessEnv }} place address: where this machine reaches it
 * @returns {ServerEnvironment}
 */
export function serverEnvironment({ url, secret, address, host, set = process.env }) {
  return {
    DATABASE_URL: url,
    BETTER_AUTH_SECRET: set.BETTER_AUTH_SECRET || secret,
    BETTER_AUTH_URL: set.BETTER_AUTH_URL || address,
    // Where only this machine can reach the program, whoever opens it first is the one who started it.
    SANDBUCKET_SETUP_CODE: set.SANDBUCKET_SETUP_CODE || (isOnlyThisMachine(host) ? '' : newSetupCode()),
  };
}

/**
 * Returns the secret that was made with the data folder.
 * @param {string} folder
 */
export function readSecret(folder) {
  return readFileSync(path.join(folder, 'secret'), 'utf8').trim();
}

/** 80 bits, in four groups to be typed from one screen into another. */
function newSetupCode() {
  const group = () => Array.from({ length: GROUP_LENGTH }, () => SIGNS[randomInt(SIGNS.length)]).join('');
  return Array.from({ length: GROUPS }, group).join('-');
}
