import 'server-only';
import { timingSafeEqual } from 'node:crypto';
import { cookies } from 'next/headers';
import { findMember } from '@/lib/db/people/find-member';
import { database } from '../database';
import { env } from '../env';
import { sealOf } from '../secret';

const COOKIE = 'sandbucket.school';
const ONE_YEAR_S = 365 * 24 * 60 * 60;

/**
 * Notes on this device which school it belongs to, so that the emergency page shows that school's numbers when nobody
 * is signed in any more. Of somebody who works in several it chooses one of their own; it opens nothing else.
 */
export async function rememberSchool(userId: string): Promise<void> {
  const member = await findMember(database(), userId, await rememberedSchool());
  if (member !== null) await rememberSchoolOfId(member.schoolId);
}

/** Notes the same of one school: also the one that somebody who works in several chose on this device. */
export async function rememberSchoolOfId(schoolId: string): Promise<void> {
  const secure = env.publicUrl?.startsWith('https:') ?? false;
  (await cookies()).set(COOKIE, `${schoolId}.${sealFor(schoolId)}`, { httpOnly: true, sameSite: 'lax', secure, path: '/', maxAge: ONE_YEAR_S });
}

/** Returns the id of the school this device belongs to, or null. */
export async function rememberedSchool(): Promise<string | null> {
  const [schoolId, seal] = (await cookies()).get(COOKIE)?.value.split('.') ?? [];
  if (schoolId === undefined || seal === undefined) return null;
  const [given, right] = [Buffer.from(seal), Buffer.from(sealFor(schoolId))];
  return given.length === right.length && timingSafeEqual(given, right) ? schoolId : null;
}

function sealFor(schoolId: string): string {
  return sealOf('remembered-schools', schoolId);
}
