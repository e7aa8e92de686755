// The classes of characters that a PDF is cut up by: ISO 32000-2, tables 1 and 2.

const WHITE = new Set([0x00, 0x09, 0x0a, 0x0c, 0x0d, 0x20]);
const DELIMITERS = new Set([...'()<>[]{}/%'].map((character) => character.charCodeAt(0)));

export const isWhite = (byte: number | undefined): boolean => byte !== undefined && WHITE.has(byte);
export const isDigit = (byte: number | undefined): boolean => byte !== undefined && byte >= 0x30 && byte <= 0x39;

/** Whether a byte can be part of a name, a number or a keyword. */
export const isRegular = (byte: number | undefined): boolean => byte !== undefined && !WHITE.has(byte) && !DELIMITERS.has(byte);

/** The value of a hexadecimal digit; undefined for any other byte. */
export function hexDigit(byte: number | undefined): number | undefined {
  if (byte === undefined) return undefined;
  if (isDigit(byte)) return byte - 0x30;
  const lower = byte | 0x20;
  return lower >= 0x61 && lower <= 0x66 ? lower - 0x57 : undefined;
}

/** Bytes as characters, one to one. */
export function latin1(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}

/** Characters up to U+00FF as bytes, one to one. */
export function latin1Bytes(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(text, 'latin1'));
}
