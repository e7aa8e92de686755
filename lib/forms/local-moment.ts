const LOCAL = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::\d{2})?$/;

/**
 * Returns the moment a clock in that zone shows a local date and time, "2026-11-25T15:48" as a date field sends it; null
 * when there is no such day or time. An hour that comes twice in autumn is the first of the two; one that is left out
 * in spring counts as if the clock had not been changed yet.
 * @param timeZone IANA name
 */
export function momentOfLocal(text: string, timeZone: string): Date | null {
  const match = LOCAL.exec(text.trim());
  if (match === null) return null;
  const [year, month, day, hour, minute] = match.slice(1, 6).map(Number) as [number, number, number, number, number];
  const asUtc = Date.UTC(year, month - 1, day, hour, minute);
  if (hour > 23 || minute > 59 || new Date(asUtc).getUTCDate() !== day || new Date(asUtc).getUTCMonth() !== month - 1) return null;
  // Twelve hours before and after lie on either side of any change of the clock.
  const offsets = [asUtc - HALF_A_DAY_MS, asUtc + HALF_A_DAY_MS].map((at) => localAsUtc(new Date(at), timeZone) - at);
  const candidates = offsets.map((offset) => asUtc - offset);
  const right = candidates.filter((at) => localAsUtc(new Date(at), timeZone) === asUtc);
  return new Date(right.length > 0 ? Math.min(...right) : (candidates[0] ?? asUtc));
}

/** Returns a moment as a date field shows it: "2026-11-25T15:48". */
export function localOfMoment(at: Date, timeZone: string): string {
  return new Date(localAsUtc(at, timeZone)).toISOString().slice(0, 16);
}

const HALF_A_DAY_MS = 43_200_000;

/** What the clock there shows, taken as if it were UTC; to the minute. */
function localAsUtc(at: Date, timeZone: string): number {
  const parts = new Intl.DateTimeFormat('en-GB', { year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric', hourCycle: 'h23', timeZone }).formatToParts(at);
  const part = (type: string): number => Number(parts.find((one) => one.type === type)?.value);
  return Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
}
