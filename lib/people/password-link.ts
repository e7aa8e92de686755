import { z } from 'zod';
import { HOUR_MS } from '@/lib/units/time';

/** How long a link for a new password works. Handed over in person or by telephone, an hour is enough to use it. */
export const PASSWORD_LINK_MS = HOUR_MS;

/** What the officer gets to pass on. */
export const PasswordLinkSchema = z.object({ address: z.string() });
export type PasswordLink = z.output<typeof PasswordLinkSchema>;

export const NewPasswordInputSchema = z.object({ token: z.string(), password: z.string({ error: 'Enter a password' }).min(1, 'Enter a password') });
export type NewPasswordInput = z.output<typeof NewPasswordInputSchema>;

/** What a link's token says; the seal after it is checked by the server. */
export interface PasswordToken {
  readonly userId: string;
  /** ms since 1970 */
  readonly until: number;
}

const TOKEN = /^([A-Za-z0-9_-]{1,64})\.(\d{13})\.([A-Za-z0-9_-]{43})$/;

/** Returns what a token says and its seal, or null for a text that is no token. */
export function readPasswordToken(token: string): (PasswordToken & { readonly seal: string }) | null {
  const [, userId, until, seal] = TOKEN.exec(token) ?? [];
  return userId === undefined || until === undefined || seal === undefined ? null : { userId, until: Number(until), seal };
}
