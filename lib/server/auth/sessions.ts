import 'server-only';
import { headers } from 'next/headers';
import { auth } from './auth';

export interface SignedInBrowser {
  readonly id: string;
  readonly since: Date;
  readonly until: Date;
  /** what the browser says it is, shortened; null when it says nothing */
  readonly browser: string | null;
  /** the one that asks */
  readonly isThis: boolean;
}

/** Returns the browsers in which this account is signed in, this one first, then the latest. */
export async function listSessions(): Promise<readonly SignedInBrowser[]> {
  const sent = await headers();
  const [here, sessions] = await Promise.all([auth().api.getSession({ headers: sent }), auth().api.listSessions({ headers: sent })]);
  return sessions
    .map((session) => ({ id: session.id, since: session.createdAt, until: session.expiresAt, browser: browserName(session.userAgent), isThis: session.id === here?.session.id }))
    .sort((a, b) => Number(b.isThis) - Number(a.isThis) || b.since.getTime() - a.since.getTime());
}

/** Ends the session of this browser. */
export async function endSession(): Promise<void> {
  await auth().api.signOut({ headers: await headers() });
}

/** Ends every session of the account, this one too. */
export async function endAllSessions(): Promise<void> {
  const sent = await headers();
  await auth().api.revokeOtherSessions({ headers: sent });
  await auth().api.signOut({ headers: sent });
}

/** Kinds of browser and of machine, as their own names stand in what they say; the first that is found counts. */
const BROWSERS: readonly (readonly [RegExp, string])[] = [[/Edg\//, 'Edge'], [/Firefox\//, 'Firefox'], [/Chrom(e|ium)\//, 'Chrome'], [/Safari\//, 'Safari']];
const MACHINES: readonly (readonly [RegExp, string])[] = [[/iPhone/, 'iPhone'], [/iPad/, 'iPad'], [/Android/, 'Android'], [/Windows/, 'Windows'], [/Mac OS X/, 'Mac'], [/Linux|CrOS/, 'Linux']];

function browserName(userAgent: string | null | undefined): string | null {
  if (!userAgent) return null;
  const find = (names: typeof BROWSERS) => names.find(([pattern]) => pattern.test(userAgent))?.[1];
  const [browser, machine] = [find(BROWSERS), find(MACHINES)];
  return browser === undefined ? userAgent.slice(0, 40) : [browser, machine].filter(Boolean).join(' on ');
}
