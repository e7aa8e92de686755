import type { DocumentRecord } from '@/lib/db/documents/document-status';
import type { DocumentStatus } from '@/lib/pdf/verify/verdict';
import { calendarDay } from '@/lib/wording/dates';

/** What the records say of a paper, the worst first: what was withdrawn stays withdrawn, whatever else is true of it. */
export function statusOf(record: DocumentRecord | null, now: Date): DocumentStatus {
  if (record === null) return { state: 'no-record' };
  if (record.withdrawnAt !== null) return { state: 'withdrawn', since: record.withdrawnAt };
  const replaced = record.supersededAt ?? record.replacedAt;
  if (replaced !== null) return { state: 'superseded', since: replaced };
  if (record.suspendedAt !== null) return { state: 'suspended', since: record.suspendedAt, reason: record.suspendedWhy ?? '' };
  if (record.reviewBy !== null && calendarDay(now, record.timeZone) > record.reviewBy) return { state: 'ended', since: endOf(record.reviewBy) };
  if (record.eventEndsAt !== null && now > record.eventEndsAt) return { state: 'ended', since: record.eventEndsAt };
  const about = record.kind === 'incident' ? { about: 'incident' as const } : {};
  if (record.reviewAskedAt !== null) return { state: 'under-review', since: record.reviewAskedAt, ...about };
  if (record.eventEndsAt !== null) return { state: 'in-force', until: record.eventEndsAt };
  return record.reviewBy === null ? { state: 'in-force', ...about } : { state: 'in-force', until: endOf(record.reviewBy) };
}

/** Noon, so that the day is the same wherever it is written down. */
const endOf = (day: string): Date => new Date(`${day}T12:00:00Z`);
