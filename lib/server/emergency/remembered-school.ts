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
 * is signed in any more. It opens nothing else.
 */
export async function rememberSchool(userId: string): Promise<void> {
  const member = await findMember(database(), userId);
  if (member === null) return;
  const secure = env.publicUrl?.startsWith('https:') ?? false;
  (await cookies()).set(COOKIE, `${member.schoolId}.${sealFor(member.schoolId)}`, { httpOnly: true, sameSite: 'lax', secure, path: '/', maxAge: ONE_YEAR_S });
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
