import { randomInt } from 'node:crypto';

/** Crockford's letters: none is taken for another on a printed page. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A number for a paper, such as "SB-7F2K-Q9XM": it tells nothing and is not to be guessed from another. */
export function newDocumentNumber(): string {
  const group = (): string => Array.from({ length: 4 }, () => LETTERS[randomInt(LETTERS.length)]).join('');
  return `SB-${group()}-${group()}`;
}

/** The beginning of a fingerprint in groups of four, to be compared by eye. */
export function shortFingerprint(hash: string): string {
  const hex = hash.replace(/[^0-9a-f]/gi, '').slice(0, 16);
  return hex.match(/.{4}/g)?.join(' ') ?? '';
}
