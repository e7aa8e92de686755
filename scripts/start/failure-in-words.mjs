import { compilerHint } from './compiler.mjs';

/**
 * What the output of a failed step gives away, the surest sign first.
 * @type {readonly { sign: RegExp, words: (platform: NodeJS.Platform) => string }[]}
 */
const SIGNS = [
  { sign: /ENOSPC|no space left on device|disk quota exceeded|SQLITE_FULL/i, words: () => 'The disk is full. Make room (about 1.5 GB), then start again.' },
  {
    sign: /gyp ERR!|not found: make|g\+\+: (not found|No such file)|Could not find any Visual Studio/i,
    words: (platform) => `The database driver better-sqlite3 had to be compiled, and that failed: a C++ compiler, make or Python is missing or does not work. ${compilerHint(platform)}`,
  },
  {
    sign: /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|network (request|timeout)/,
    words: () => 'The package registry could not be reached. Check your connection and, behind a proxy, the setting: npm config set proxy http://…',
  },
  { sign: /\bE40[13]\b/, words: () => 'The package registry refused access. Look at the settings npm uses: npm config list' },
  { sign: /EINTEGRITY/, words: () => 'A package did not arrive as it should be. Empty the cache and start again: npm cache clean --force' },
  { sign: /SELF_SIGNED_CERT|UNABLE_TO_GET_ISSUER|CERT_/, words: () => 'The certificate of the package registry is not trusted here. Behind an inspecting proxy, set NODE_EXTRA_CA_CERTS to its certificate.' },
  { sign: /heap out of memory|ENOMEM|Cannot allocate memory/, words: () => 'The machine ran out of memory. Close other programs (a build takes about 1.5 GB), then start again.' },
  { sign: /EADDRINUSE/, words: () => 'Another program took the port in the meantime. Start again.' },
  { sign: /EROFS/, words: () => 'This folder cannot be written to. Copy the project to one that can.' },
  { sign: /EACCES|EPERM|permission denied/i, words: () => 'Your account may not write to a file it has to. Look at who owns this folder; do not start with sudo.' },
  { sign: /SQLITE_BUSY|database is locked/i, words: () => 'Another program holds the database. Stop it, then start again.' },
  { sign: /SQLITE_CORRUPT|SQLITE_NOTADB|file is not a database/i, words: () => 'The database file is damaged. Put your last backup of data/ in its place.' },
];

/**
 * Returns a sentence that says what went wrong and what to do, or undefined when the output gives nothing away.
 * @param {string} output
 * @param {NodeJS.Platform} [platform]
 * @returns {string | undefined}
 */
export function failureInWords(output, platform = process.platform) {
  return SIGNS.find(({ sign }) => sign.test(output))?.words(platform);
}
