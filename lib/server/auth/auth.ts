import 'server-only';
import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import { nextCookies } from 'better-auth/next-js';
import { engineOfUrl } from '@/lib/db/database-url';
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from '@/lib/people/password';
import { database } from '../database';
import { env } from '../env';
import { keyFor } from '../secret';
import { hashPassword, passwordMatches } from './passwords';

/** A week of the season and the weekend after it; then one signs in again. Signing a paper asks for the password anyway. */
const SIGNED_IN_S = 14 * 24 * 60 * 60;

/**
 * Sign-in as better-auth does it, reached only from lib/server: none of its own addresses is served, so its limits by
 * address, which a forged forwarding header gets round, are not what protects an account. That is done per account in
 * sign-in-attempts.ts. Accounts are made only by /begin and by invitations.
 */
function createAuth() {
  return betterAuth({
    appName: 'Sandbucket',
    secret: keyFor('sign-in').toString('base64url'),
    baseURL: env.publicUrl ?? 'http://localhost',
    database: prismaAdapter(database(), { provider: engineOfUrl(env.databaseUrl) ?? 'sqlite', transaction: true }),
    user: { modelName: 'user' },
    session: {
      modelName: 'signInSession',
      expiresIn: SIGNED_IN_S,
      // A page cannot set cookies, so a session is not made longer by looking at one.
      disableSessionRefresh: true,
    },
    account: { modelName: 'signInMethod' },
    verification: { modelName: 'signInToken' },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: SHORTEST_PASSWORD,
      maxPasswordLength: LONGEST_PASSWORD,
      password: { hash: hashPassword, verify: ({ hash, password }) => passwordMatches(hash, password) },
    },
    advanced: {
      cookiePrefix: 'sandbucket',
      ipAddress: { disableIpTracking: true },
    },
    rateLimit: { enabled: false },
    telemetry: { enabled: false },
    // A wrong password is nothing for the log.
    logger: { level: 'error' },
    plugins: [nextCookies()],
  });
}

const holder = globalThis as typeof globalThis & { sandbucketAuth?: ReturnType<typeof createAuth> };

/** Returns the one instance of this process; made when first needed, since there is no secret while the program is built. */
export function auth(): ReturnType<typeof createAuth> {
  holder.sandbucketAuth ??= createAuth();
  return holder.sandbucketAuth;
}
