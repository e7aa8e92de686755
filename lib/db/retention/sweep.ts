import { SWEPT_AFTER_DAYS } from '@/lib/people/retention';
import { DAY_MS } from '@/lib/units/time';
import type { Db } from '../client';

/** Takes away what is over and of no school's record: ended sign-ins, spent tokens, old tries, typing nobody finished. */
export async function sweepSignIns(db: Db, now: Date): Promise<void> {
  const before = (days: number): Date => new Date(now.getTime() - days * DAY_MS);
  await db.signInSession.deleteMany({ where: { expiresAt: { lt: now } } });
  await db.signInToken.deleteMany({ where: { expiresAt: { lt: now } } });
  await db.signInAttempt.deleteMany({ where: { at: { lt: before(SWEPT_AFTER_DAYS.signInAttempts) } } });
  await db.incidentDraft.deleteMany({ where: { savedAt: { lt: before(SWEPT_AFTER_DAYS.incidentDrafts) } } });
}
