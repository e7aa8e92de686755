/** Keys and indexes from the document down to a value. */
export type Path = readonly (string | number)[];

const PLAIN_NAME = /^[A-Za-z_][A-Za-z0-9_]*$/;
const UNPRINTABLE = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** @returns a path as JSONPath (RFC 9535, from memory) writes it, for example `$.answers["room-size"].chargingVolume` */
export function jsonPath(path: Path): string {
  return `$${path.map(step).join('')}`;
}

function step(part: string | number): string {
  if (typeof part === 'number') return `[${part}]`;
  if (PLAIN_NAME.test(part)) return `.${part}`;
  const inCode = JSON.stringify(part).replace(UNPRINTABLE, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
  return `[${inCode}]`;
}
