import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** What `next build` reads. Everything else may change without a new build. */
const FOLDERS = ['app', 'lib', 'prisma', 'public'];
/** Written by the steps before the build, out of files that are counted already. */
const GENERATED = ['lib/db/generated', 'prisma/composed'];
const ROOT_FILE = /\.(ts|mjs|js|json|css)$/;
/** Settings of the checks, and a file that the build writes itself. */
const NOT_BUILT = /^(vitest|playwright|eslint|prisma)\.|^next-env\.d\.ts$/;

/**
 * Returns a fingerprint of everything a build depends on: a change, a new name or a lost file gives another one.
 * @param {string} root project folder
 * @returns {string} SHA-256, hexadecimal
 */
export function sourceFingerprint(root) {
  const hash = createHash('sha256');
  for (const file of buildInputs(root)) {
    const content = readFileSync(path.join(root, file));
    hash.update(`${file}\n${content.length}\n`).update(content);
  }
  return hash.digest('hex');
}

/**
 * Returns the files a build reads, relative to the project, with forward slashes, in a fixed order.
 * @param {string} root
 * @returns {string[]}
 */
export function buildInputs(root) {
  const inRoot = readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.') && ROOT_FILE.test(entry.name) && !NOT_BUILT.test(entry.name))
    .map((entry) => entry.name);
  const inFolders = FOLDERS.filter((folder) => existsSync(path.join(root, folder))).flatMap((folder) => filesBelow(root, folder));
  return [...inRoot, ...inFolders].sort();
}

/**
 * @param {string} root
 * @param {string} folder with forward slashes
 * @returns {string[]}
 */
function filesBelow(root, folder) {
  if (GENERATED.includes(folder)) return [];
  return readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const name = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesBelow(root, name) : [name];
  });
}
