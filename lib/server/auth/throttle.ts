import 'server-only';
import { SignInAttempts } from '@/lib/db/people/sign-in-attempts';
import { judgeAttempt, waitInWords, WINDOW_MS } from '@/lib/people/sign-in-attempts';
import { database } from '../database';
import { sealOf } from '../secret';

export type Tried<Result> = { readonly ok: true; readonly result: Result } | { readonly ok: false; readonly reason: string };

/**
 * Looks at a password at most as often as `judgeAttempt` allows for one bucket. Counting goes by account, so no address
 * and no header of the request has a part in it. The try is noted first: of a hundred at the same moment ten go on.
 * @param look looks at the password; what it returns is right when `isRight` says so, and then the tries are forgotten
 */
export async function throttled<Result>(bucket: string, look: () => Promise<Result>, isRight: (result: Result) => boolean): Promise<Tried<Result>> {
  const attempts = new SignInAttempts(database());
  const now = new Date();
  const since = new Date(now.getTime() - WINDOW_MS);
  const noted = await attempts.note(bucket, now);
  const verdict = judgeAttempt(await attempts.timesSince(bucket, since), now.getTime());
  if (!verdict.ok) {
    await attempts.takeBack(noted);
    return { ok: false, reason: waitInWords(verdict.waitMs) };
  }
  const result = await look();
  if (isRight(result)) await attempts.settle(bucket, since);
  return { ok: true, result };
}

/**
 * Returns the bucket of an account: keyed, so that the table tells nobody which addresses were tried. A browser that
 * has signed in to the account before has a bucket of its own, so that strangers who guess cannot lock its person out.
 */
export function bucketOf(email: string, knownBrowser: string | undefined): string {
  return sealOf('sign-in-attempts', knownBrowser === undefined ? email : `${email} ${knownBrowser}`);
}
