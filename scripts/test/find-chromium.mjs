import { existsSync } from 'node:fs';
import path from 'node:path';

/** The first is the same engine without the windows of a browser around its pages: it takes half of the time. */
const NAMES = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const MAC_APPLICATIONS = ['/Applications/Chromium.app/Contents/MacOS/Chromium', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'];

/**
 * Returns the browser for the end-to-end tests: the one CHROMIUM_PATH names, else one that is installed, else
 * undefined; Playwright then takes its own, if that was downloaded.
 * @returns {string | undefined}
 */
export function findChromium() {
  if (process.env.CHROMIUM_PATH) return process.env.CHROMIUM_PATH;
  const onPath = (process.env.PATH ?? '').split(path.delimiter).flatMap((folder) => NAMES.map((name) => path.join(folder, name)));
  return [...onPath, ...MAC_APPLICATIONS].find((file) => existsSync(file));
}
