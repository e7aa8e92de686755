import { z } from 'zod';

/** A calendar day as a date field sends it. Left empty it is null. */
export function optionalDay() {
  return z.string().trim().nullish().transform((text, context): string | null => {
    if (text === undefined || text === null || text === '') return null;
    if (isDay(text)) return text;
    context.addIssue({ code: 'custom', message: 'Write the date as year, month and day, such as 2026-11-25', input: text });
    return z.NEVER;
  });
}

/** Whether a text is a day of the calendar, YYYY-MM-DD; 30 February is none. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
