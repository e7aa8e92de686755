import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @typedef {{ packages: Record<string, { version?: string, optional?: boolean, devOptional?: boolean }> }} Lock */

/**
 * Returns what an installation is for: these packages, and this kind of Node, as native modules fit only one.
 * @param {string} root project folder
 */
function installFingerprint(root) {
  const lock = readFileSync(path.join(root, 'package-lock.json'));
  return createHash('sha256').update(lock).update(`${process.platform} ${process.arch} ${process.versions.modules}`).digest('hex');
}

/** @param {string} root */
const stampFile = (root) => path.join(root, 'node_modules', '.sandbucket-install');

/**
 * Says whether the packages were installed by these scripts, for this lock file and this Node.
 * @param {string} root
 */
export function isInstalled(root) {
  return existsSync(stampFile(root)) && readFileSync(stampFile(root), 'utf8') === installFingerprint(root);
}

/** @param {string} root */
export function markInstalled(root) {
  writeFileSync(stampFile(root), installFingerprint(root));
}

/**
 * Says whether somebody else, by `npm ci` say, installed what the lock file asks for.
 * @param {string} root
 */
export function isInstalledByHand(root) {
  const hidden = path.join(root, 'node_modules', '.package-lock.json');
  if (existsSync(stampFile(root)) || !existsSync(hidden)) return false;
  return installMatchesLock(JSON.parse(readFileSync(path.join(root, 'package-lock.json'), 'utf8')), JSON.parse(readFileSync(hidden, 'utf8')));
}

/**
 * Compares the wanted packages with npm's own list of the installed ones. Optional ones may be missing: they are for
 * other platforms.
 * @param {Lock} wanted package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json
 */
export function installMatchesLock(wanted, installed) {
  const names = Object.keys(wanted.packages).filter((name) => name !== '');
  const complete = names.every((name) => {
    const found = installed.packages[name];
    const entry = wanted.packages[name];
    return found ? found.version === entry?.version : Boolean(entry?.optional || entry?.devOptional);
  });
  return complete && Object.keys(installed.packages).every((name) => name in wanted.packages);
}
