import { z } from 'zod';

/** How long a school keeps what names or shows people; months, null: until somebody removes it. */
export interface Retention { readonly photosKeptMonths: number | null; readonly personsKeptMonths: number | null }

/** Shorter than a season would take away what its review needs; longer than ten years is for good. */
export const KEPT_MONTHS = { least: 6, most: 120 } as const;

const months = z.string().trim().transform((typed, context) => {
  if (typed === '') return null;
  const value = Number(typed);
  if (Number.isInteger(value) && value >= KEPT_MONTHS.least && value <= KEPT_MONTHS.most) return value;
  context.addIssue({ code: 'custom', message: `Write whole months from ${KEPT_MONTHS.least} to ${KEPT_MONTHS.most}, or leave it empty` });
  return z.NEVER;
});

export const RetentionSchema = z.object({ revision: z.coerce.number().int(), photosKeptMonths: months, personsKeptMonths: months });
export type RetentionChange = z.output<typeof RetentionSchema>;

/** Returns the moment before which something is due to go. Months are those of the calendar; the last day stands in for one that a month does not have. */
export function dueBefore(now: Date, keptMonths: number): Date {
  const due = new Date(now);
  due.setUTCMonth(due.getUTCMonth() - keptMonths);
  // 31 March less one month is no 3 March.
  if (due.getUTCDate() !== now.getUTCDate()) due.setUTCDate(0);
  return due;
}

/** What the program takes away by itself, whatever a school has set; days after its end or its last change. */
export const SWEPT_AFTER_DAYS = { incidentDrafts: 30, signInAttempts: 7 } as const;
