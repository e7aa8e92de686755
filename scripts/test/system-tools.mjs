import { existsSync, readFileSync } from 'node:fs';
import { runChild } from '../start/children.mjs';
import { isOnPath } from '../start/compiler.mjs';
import { lastLines } from '../start/log.mjs';
import { findChromium } from './find-chromium.mjs';
import { ONE_PASSED, oneFailed } from './tally.mjs';

/**
 * @typedef {object} Tool
 * @property {string} aptPackage
 * @property {string} [elsePackage] where there is no such package
 * @property {string} command
 * @property {string} purpose
 */

/** @type {readonly Tool[]} */
export const TOOLS = [
  { aptPackage: 'chromium-headless-shell', elsePackage: 'chromium', command: 'chromium', purpose: 'the browser of the end-to-end tests' },
  { aptPackage: 'poppler-utils', command: 'pdfinfo', purpose: 'reads PDF files and their signatures' },
  { aptPackage: 'qpdf', command: 'qpdf', purpose: 'checks the structure of PDF files' },
  { aptPackage: 'openssl', command: 'openssl', purpose: 'checks signatures a second way' },
  { aptPackage: 'zbar-tools', command: 'zbarimg', purpose: 'reads QR codes' },
];

/**
 * Brings the programs the tests call: on Debian, as root, by its own package manager; elsewhere it says what is
 * missing and how to get it.
 * @param {import('../start/install.mjs').Workplace} place
 * @returns {Promise<import('./tally.mjs').Outcome>}
 */
export async function bringSystemTools({ root, log }) {
  const missing = missingTools(process.env.PATH ?? '');
  if (missing.length === 0) return ONE_PASSED;
  if (!isRootOnDebian()) return oneFailed(missingInWords(missing, process.platform));
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const update = await runChild('apt-get', ['update'], { cwd: root, env, log });
  const install = (/** @type {string[]} */ names) => runChild('apt-get', ['install', '-y', '--no-install-recommends', ...names], { cwd: root, env, log });
  const packages = missing.map((tool) => tool.aptPackage);
  const first = await install(packages);
  const last = first.ok ? first : await install(missing.map((tool) => tool.elsePackage ?? tool.aptPackage));
  if (last.ok && missingTools(process.env.PATH ?? '').length === 0) return ONE_PASSED;
  return oneFailed([`apt-get could not install ${packages.join(', ')}:`, ...lastLines(update.ok ? last.output : update.output)]);
}

/**
 * @param {string} searchPath the variable PATH
 * @returns {Tool[]}
 */
export function missingTools(searchPath) {
  const has = (/** @type {Tool} */ { command }) =>
    command === 'chromium' ? findChromium() !== undefined : isOnPath(command, searchPath) || isOnPath(`${command}.exe`, searchPath);
  return TOOLS.filter((tool) => !has(tool));
}

/**
 * @param {readonly Tool[]} missing
 * @param {NodeJS.Platform} platform
 * @returns {string[]}
 */
export function missingInWords(missing, platform) {
  const packages = missing.map((tool) => tool.elsePackage ?? tool.aptPackage);
  const how = {
    darwin: `Install with: brew install ${packages.map((name) => ({ chromium: '--cask chromium', 'poppler-utils': 'poppler', 'zbar-tools': 'zbar' })[name] ?? name).join(' ')}`,
    win32: 'On Windows the simplest way is the Debian system inside WSL; there these tests install what they need.',
  };
  const onLinux = `Install with: sudo apt-get install ${packages.join(' ')} (on Ubuntu, where chromium is a snap, any Chrome or Chromium will do: set CHROMIUM_PATH to it)`;
  return [
    ...missing.map((tool) => `Missing: ${tool.command}, which ${tool.purpose.replace(/^the /, 'is the ')}.`),
    platform === 'darwin' || platform === 'win32' ? how[platform] : onLinux,
  ];
}

function isRootOnDebian() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/etc/os-release')) return false;
  return /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));
}
