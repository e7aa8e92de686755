import { statfsSync } from 'node:fs';

/** Packages and one build take about 1.2 GB; this leaves some room. */
export const NEEDED_BYTES = 1_500_000_000;

/**
 * Returns a sentence when the disk has too little room for an installation, else undefined.
 * @param {string} root project folder
 * @param {number} [freeBytes]
 */
export function tooLittleSpace(root, freeBytes = freeBytesAt(root)) {
  if (freeBytes >= NEEDED_BYTES) return undefined;
  const gigabytes = (/** @type {number} */ bytes) => (bytes / 1e9).toFixed(1);
  return `The disk of ${root} has ${gigabytes(freeBytes)} GB free, and installing takes ${gigabytes(NEEDED_BYTES)} GB. Make room, then start again.`;
}

/** @param {string} folder */
function freeBytesAt(folder) {
  const disk = statfsSync(folder);
  return disk.bavail * disk.bsize;
}
