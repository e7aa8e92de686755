import 'server-only';
import { headers } from 'next/headers';
import { forbidden, redirect } from 'next/navigation';
import { cache } from 'react';
import { mayEver } from '@/lib/access/can';
import type { Action } from '@/lib/access/table';
import { findMember, type Member } from '@/lib/db/people/find-member';
import { auth } from './auth/auth';
import { database } from './database';
import { rememberedSchool } from './emergency/remembered-school';
import { PATH_HEADER } from './forwarded-headers';
import { ownPath } from './own-path';

/** Who asks: a person at work in a school, with one role. Every query is held to `schoolId`. */
export type Actor = Member;

/** Returns who asks, or null. Looked up once per request; a closed account is nobody from the next request on. */
export const currentActor = cache(async (): Promise<Actor | null> => {
  const session = await auth().api.getSession({ headers: await headers() });
  return session ? findMember(database(), session.user.id, await rememberedSchool()) : null;
});

/** Returns who asks; somebody who is not signed in is led to the sign-in and back to this page afterwards. */
export async function requireActor(): Promise<Actor> {
  const actor = await currentActor();
  if (actor) return actor;
  const asked = ownPath((await headers()).get(PATH_HEADER));
  redirect(`/sign-in?then=${encodeURIComponent(asked)}`);
}

/**
 * Returns who asks, when their role may do this in some case at all; else answers 403. A page or action calls it first.
 * Where the table says `own` or `others`, the use case decides by `can` with its case.
 */
export async function requireMay(action: Action): Promise<Actor> {
  const actor = await requireActor();
  if (!mayEver(actor.role, action)) forbidden();
  return actor;
}
