/** A number as people write it: digits, perhaps parted by blanks, brackets, points, slashes or hyphens. */
const NUMBER = /^\+?[\d(][\d\s()/.-]*$/;
/** "+44 (0)20 …": the bracket is left out when the country's number is dialled. */
const TRUNK_ZERO = /\(0\)/;

/**
 * Returns the address a telephone dials ("tel:…"), or null when the text is more than one number: a note after the digits
 * must not be dialled with them.
 */
export function dialAddress(text: string): string | null {
  const number = text.trim();
  if (!NUMBER.test(number)) return null;
  const digits = (number.startsWith('+') ? number.replace(TRUNK_ZERO, '') : number).replace(/\D/g, '');
  if (digits.length < 3) return null;
  return `tel:${number.startsWith('+') ? '+' : ''}${digits}`;
}
