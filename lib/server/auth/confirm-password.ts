import 'server-only';
import { APIError } from 'better-auth/api';
import { headers } from 'next/headers';
import { LONGEST_PASSWORD } from '@/lib/people/password';
import { auth } from './auth';
import { knownBrowser } from './known-browser';
import { bucketOf, throttled } from './throttle';

/**
 * Asks somebody who is signed in for the password again, as signing a paper and changing the password do. Counted with
 * the tries to sign in to the same account.
 * @returns null when it is theirs, else why not, in words
 */
export async function confirmPassword(password: string): Promise<string | null> {
  const sent = await headers();
  const session = await auth().api.getSession({ headers: sent });
  if (!session) return 'You are no longer signed in. Sign in again';
  const { email } = session.user;
  const bucket = bucketOf(email, await knownBrowser(email));
  const tried = await throttled(bucket, () => isTheirs(password, sent), (right) => right);
  if (!tried.ok) return tried.reason;
  return tried.result ? null : 'This is not your password. Type it again';
}

async function isTheirs(password: string, sent: Headers): Promise<boolean> {
  if (password.length > LONGEST_PASSWORD) return false;
  try {
    const { status } = await auth().api.verifyPassword({ body: { password }, headers: sent });
    return status;
  } catch (error) {
    if (error instanceof APIError && error.statusCode === 400) return false;
    throw error;
  }
}
