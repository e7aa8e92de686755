/** @typedef {{ ok: true } | { ok: false, reason: string }} Check */

/**
 * Says whether a Node version is one of those the project runs on.
 * @param {string} version such as `20.19.0`
 * @param {string} range of package.json, made of `^a.b.c` and `>=a.b.c` joined by `||`
 * @returns {Check}
 */
export function checkNodeVersion(version, range) {
  const accepted = range.split('||').map((part) => part.trim());
  if (accepted.some((part) => satisfies(version, part))) return { ok: true };
  const lines = [
    `Sandbucket needs another version of Node.js: you have ${version}, and it runs on ${inWords(accepted)}.`,
    'Get the current long-term version from https://nodejs.org, or with a version manager: nvm install 24, fnm install 24.',
    'On Debian and Ubuntu the packaged Node.js is often too old; on macOS: brew install node@24; on Windows: winget install OpenJS.NodeJS.LTS.',
  ];
  return { ok: false, reason: lines.join('\n') };
}

/**
 * @param {string} version
 * @param {string} part
 */
function satisfies(version, part) {
  const have = numbers(version);
  const least = numbers(part);
  const enough = compare(have, least) >= 0;
  return part.startsWith('^') ? enough && have[0] === least[0] : enough;
}

/**
 * @param {string} text
 * @returns {number[]} major, minor, patch
 */
function numbers(text) {
  const found = /(\d+)\.(\d+)\.(\d+)/.exec(text);
  if (!found) throw new Error(`Not a version: ${text}`);
  return found.slice(1).map(Number);
}

/**
 * @param {number[]} a
 * @param {number[]} b
 */
function compare(a, b) {
  const index = a.findIndex((value, at) => value !== b[at]);
  return index === -1 ? 0 : Number(a[index]) - Number(b[index]);
}

/** @param {string[]} accepted */
function inWords(accepted) {
  const parts = accepted.map((part) => {
    const [major, minor] = numbers(part);
    return part.startsWith('^') ? `${major}.${minor} or a later ${major}` : `${major} or later`;
  });
  return parts.join(', or ');
}
