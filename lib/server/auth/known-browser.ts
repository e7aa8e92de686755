import 'server-only';
import { randomBytes, timingSafeEqual } from 'node:crypto';
import { cookies } from 'next/headers';
import { env } from '../env';
import { sealOf } from '../secret';

const COOKIE = 'sandbucket.known';
const ONE_YEAR_S = 365 * 24 * 60 * 60;

/**
 * Returns the mark of this browser when it has signed in to the account before, else undefined. The mark is bound to the
 * account by a key of ours; it lets nobody in, it only keeps the tries of others apart from those made here.
 */
export async function knownBrowser(email: string): Promise<string | undefined> {
  const [mark, seal] = (await cookies()).get(COOKIE)?.value.split('.') ?? [];
  if (mark === undefined || seal === undefined) return undefined;
  const [given, right] = [Buffer.from(seal), Buffer.from(sealFor(email, mark))];
  return given.length === right.length && timingSafeEqual(given, right) ? mark : undefined;
}

/** Marks this browser as one that signed in to the account. */
export async function rememberBrowser(email: string): Promise<void> {
  const mark = randomBytes(16).toString('base64url');
  const secure = env.publicUrl?.startsWith('https:') ?? false;
  (await cookies()).set(COOKIE, `${mark}.${sealFor(email, mark)}`, { httpOnly: true, sameSite: 'lax', secure, path: '/', maxAge: ONE_YEAR_S });
}

function sealFor(email: string, mark: string): string {
  return sealOf('known-browsers', `${email} ${mark}`);
}
