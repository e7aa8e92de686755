import { calendarDay, type DateStyle } from '@/lib/wording/dates';

/** Day and times of an event: "Saturday 5 December 2026, 09:00 to 17:30 GMT"; of several days, both ends in full. */
export function whenWords({ startsAt, endsAt }: { readonly startsAt: Date; readonly endsAt: Date }, { locale, timeZone }: DateStyle): string {
  const day = (at: Date): string => new Intl.DateTimeFormat(locale, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone }).format(at);
  const clock = (at: Date, zone: boolean): string => new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit', timeZone, ...(zone ? { timeZoneName: 'short' } : {}) }).format(at);
  if (calendarDay(startsAt, timeZone) === calendarDay(endsAt, timeZone)) return `${day(startsAt)}, ${clock(startsAt, false)} to ${clock(endsAt, true)}`;
  return `${day(startsAt)}, ${clock(startsAt, false)}, to ${day(endsAt)}, ${clock(endsAt, true)}`;
}
