import 'server-only';
import { APIError } from 'better-auth/api';
import { headers } from 'next/headers';
import { LONGEST_PASSWORD } from '@/lib/people/password';
import { WRONG_SIGN_IN, type SignInInput } from '@/lib/people/sign-in';
import { refused, type Outcome } from '../forms/outcome';
import { rememberSchool } from '../emergency/remembered-school';
import { ownPath } from '../own-path';
import { isActiveUser } from './active-user';
import { auth } from './auth';
import { knownBrowser, rememberBrowser } from './known-browser';
import { bucketOf, throttled } from './throttle';

/** Signs in, and leads to the page that was asked for. */
export async function signIn({ email, password, then }: SignInInput): Promise<Outcome> {
  const bucket = bucketOf(email, await knownBrowser(email));
  const tried = await throttled(bucket, () => openSession(email, password), (userId) => userId !== null);
  if (!tried.ok) return refused(null, tried.reason);
  if (tried.result === null) return refused(null, WRONG_SIGN_IN);
  if (!(await isActiveUser(tried.result))) {
    await auth().api.signOut({ headers: await headers() });
    return refused(null, 'Your school has closed this account. Ask your safety officer');
  }
  await rememberBrowser(email);
  await rememberSchool(tried.result);
  return { ok: true, then: ownPath(then) };
}

/** Returns the id of the account whose password this is, with a session begun in this browser; null when it is wrong. */
async function openSession(email: string, password: string): Promise<string | null> {
  if (password.length > LONGEST_PASSWORD) return null;
  try {
    const { user } = await auth().api.signInEmail({ body: { email, password }, headers: await headers() });
    return user.id;
  } catch (error) {
    if (error instanceof APIError && error.statusCode === 401) return null;
    throw error;
  }
}
