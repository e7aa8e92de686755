import { SWEPT_AFTER_DAYS } from '@/lib/people/retention';
import type { Db } from '../client';

const MS_A_DAY = 86_400_000;

/** Takes away what is over and of no school's record: ended sign-ins, spent tokens, old tries, typing nobody finished. */
export async function sweepSignIns(db: Db, now: Date): Promise<void> {
  const before = (days: number): Date => new Date(now.getTime() - days * MS_A_DAY);
  await db.signInSession.deleteMany({ where: { expiresAt: { lt: now } } });
  await db.signInToken.deleteMany({ where: { expiresAt: { lt: now } } });
  await db.signInAttempt.deleteMany({ where: { at: { lt: before(SWEPT_AFTER_DAYS.signInAttempts) } } });
  await db.incidentDraft.deleteMany({ where: { savedAt: { lt: before(SWEPT_AFTER_DAYS.incidentDrafts) } } });
}
