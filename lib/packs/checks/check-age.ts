import { DAY_MS } from '@/lib/units/time';
import type { SchoolPackLimits } from '../school-rules';

/** Whole days since a check. */
export function daysSince(at: Date, now: Date): number {
  return Math.floor((now.getTime() - at.getTime()) / DAY_MS);
}

/** Returns the last check while it counts: one older than the school lets it grow is held like none. */
export function checkInForce<Check extends { readonly at: Date }>({ checkDays }: SchoolPackLimits, last: Check | null, now: Date): Check | null {
  return last === null || (checkDays !== undefined && daysSince(last.at, now) > checkDays) ? null : last;
}
