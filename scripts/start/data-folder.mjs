import { randomBytes } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const SECRET_BYTES = 32;

/**
 * Makes the folder everything is kept in, for its owner only, with a random secret in it. The secret is never printed.
 * @param {string} root project folder
 * @returns {string} absolute path of the folder
 */
export function prepareDataFolder(root) {
  const folder = path.join(root, 'data');
  const secret = path.join(folder, 'secret');
  mkdirSync(folder, { recursive: true });
  if (!existsSync(secret)) writeFileSync(secret, randomBytes(SECRET_BYTES).toString('base64url'), { mode: 0o600, flag: 'wx' });
  // Also for a folder that was there before, copied or unpacked with the rights of everybody.
  chmodSync(folder, 0o700);
  chmodSync(secret, 0o600);
  return folder;
}
