import { MINUTE_MS } from '@/lib/units/time';

/** More than anyone mistypes, too few to guess with: 960 tries a day at most. */
export const TRIES_PER_WINDOW = 10;
export const WINDOW_MS = 15 * MINUTE_MS;

export type AttemptVerdict = { readonly ok: true } | { readonly ok: false; readonly waitMs: number };

/**
 * Returns whether a try at a password may go on. Call it after this try is noted, so that tries at the same moment see
 * each other.
 * @param times when this account was tried within the window, this try among them, ms since 1970, any order
 * @param now ms since 1970
 */
export function judgeAttempt(times: readonly number[], now: number): AttemptVerdict {
  const recent = times.filter((time) => now - time < WINDOW_MS).sort((a, b) => a - b);
  if (recent.length <= TRIES_PER_WINDOW) return { ok: true };
  const [oldest = now] = recent;
  return { ok: false, waitMs: Math.max(0, oldest + WINDOW_MS - now) };
}

/** Returns what is said to somebody who tried too often; the same whether there is such an account or not. */
export function waitInWords(waitMs: number): string {
  const minutes = Math.max(1, Math.ceil(waitMs / MINUTE_MS));
  return `Too many tries with this address. Wait ${minutes} ${minutes === 1 ? 'minute' : 'minutes'}, then try again. Was it not you? Tell your safety officer`;
}
