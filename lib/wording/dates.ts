/** How a school writes days and times. */
export interface DateStyle { readonly locale: string; readonly timeZone: string }

/** A day in full: "24 November 2026". */
export function dayWords(at: Date, { locale, timeZone }: DateStyle): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone }).format(at);
}

/** A day as it stands in a column: "24 Nov 2026". */
export function shortDayWords(at: Date, { locale, timeZone }: DateStyle): string {
  return new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone }).format(at);
}

/** A calendar day, YYYY-MM-DD, in full. It has no time zone. */
export function calendarDayWords(day: string, { locale }: Pick<DateStyle, 'locale'>): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));
}

/** Day and time with the zone: "24 November 2026, 16:05 GMT". */
export function momentWords(at: Date, { locale, timeZone }: DateStyle): string {
  return new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', hour: '2-digit', minute: '2-digit', timeZoneName: 'short', timeZone }).format(at);
}

/** The calendar day it is there now, YYYY-MM-DD. */
export function calendarDay(at: Date, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', { year: 'numeric', month: '2-digit', day: '2-digit', timeZone }).formatToParts(at);
  const part = (type: string): string => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}`;
}
