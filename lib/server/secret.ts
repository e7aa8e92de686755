import 'server-only';
import { createHmac, hkdfSync } from 'node:crypto';
import { env } from './env';

/** What keys are made for. A key of one purpose tells nothing about that of another. */
export type KeyPurpose = 'sign-in' | 'invitations' | 'sign-in-attempts' | 'known-browsers' | 'remembered-schools' | 'new-passwords' | 'signing-keys' | 'caretaker-links' | 'event-links';

const KEY_BYTES = 32;

/**
 * Returns the key of this installation for one purpose, 32 bytes, by HKDF-SHA-256 (RFC 5869) from its secret.
 * Throws when there is no secret: `npm start` makes one and keeps it in data/secret.
 */
export function keyFor(purpose: KeyPurpose): Buffer {
  if (env.secret === undefined) throw new Error('BETTER_AUTH_SECRET is not set. Start the program with npm start, which makes one and keeps it in data/secret.');
  return Buffer.from(hkdfSync('sha256', env.secret, '', `sandbucket ${purpose}`, KEY_BYTES));
}

/** Returns an HMAC-SHA-256 of the text under the key of that purpose, base64url. */
export function sealOf(purpose: KeyPurpose, text: string): string {
  return createHmac('sha256', keyFor(purpose)).update(text).digest('base64url');
}
