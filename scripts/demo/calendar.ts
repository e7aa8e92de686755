import { momentOfLocal } from '@/lib/forms/local-moment';
import { dayAfter } from '@/lib/assessments/acceptance';

/** Days and hours of the demo, counted back from one day, so that the same day gives the same story. */
export interface Calendar {
  readonly timeZone: string;
  /** @param offset days from today, negative for the past */
  day(offset: number): string;
  /** @param clock hours and minutes, such as "15:30" */
  at(offset: number, clock: string): Date;
  /** 0 Sunday to 6 Saturday */
  weekday(offset: number): number;
}

/** @param today YYYY-MM-DD */
export function calendarOf(today: string, timeZone: string): Calendar {
  const day = (offset: number): string => dayAfter(today, offset);
  return {
    timeZone,
    day,
    at: (offset, clock) => {
      const moment = momentOfLocal(`${day(offset)}T${clock}`, timeZone);
      if (moment === null) throw new Error(`no such time as ${clock} on ${day(offset)}`);
      return moment;
    },
    weekday: (offset) => new Date(`${day(offset)}T00:00:00Z`).getUTCDay(),
  };
}

/** Minutes later on the same day. */
export function later(at: Date, minutes: number): Date {
  return new Date(at.getTime() + minutes * 60_000);
}
