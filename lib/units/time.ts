/** Milliseconds, for moments as `Date` has them. A day of the calendar may have an hour more or less: those are counted as text. */
export const MINUTE_MS = 60_000;
export const HOUR_MS = 60 * MINUTE_MS;
export const DAY_MS = 24 * HOUR_MS;
