import { randomBytes } from 'node:crypto';

/** A certificate's number, 16 bytes in hexadecimal: positive, never shortened, and not to be guessed (RFC 5280, 4.1.2.2). */
export function newSerial(bytes: Uint8Array = randomBytes(16)): string {
  if (bytes.length !== 16) throw new Error('a serial is made of 16 bytes');
  const serial = Uint8Array.from(bytes);
  serial[0] = ((serial[0] ?? 0) & 0x3f) | 0x40;
  return Buffer.from(serial).toString('hex');
}
