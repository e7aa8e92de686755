import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { momentOfLocal } from '@/lib/forms/local-moment';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import type { Fault } from '@/lib/forms/form-state';
import { DAY_MS } from '@/lib/units/time';
import type { EventBasics } from './event';
import { readSchedule } from './schedule';

const NO_EVENT = 'No event was named';
const LONGEST_DAYS = 14;

const many = (unit: string, most: number) => optionalTypedNumber({ least: 0, most, unit, whole: true });

/** What is asked when an event is begun or changed; times as a date field sends them. */
const BASIC_FIELDS = {
  title: line('Give it a name, such as Autumn cup, round 2', 120),
  siteId: line('Choose the place'),
  starts: line('Choose day and time of the beginning', 30),
  ends: line('Choose day and time of the end', 30),
  teams: many('teams', 200),
  people: many('people', 5000),
  spectators: many('people', 20_000),
  schedule: z.string().max(4000, 'Use at most 4000 characters').default(''),
};

/** Which event, and from which revision the form was filled in: of two people at once the second is told. */
export const TARGET_FIELDS = { eventId: line(NO_EVENT), revision: z.coerce.number().int() };

export const BeginEventSchema = z.object(BASIC_FIELDS);
export const ChangeBasicsSchema = z.object({ ...BASIC_FIELDS, ...TARGET_FIELDS });
type TypedBasics = z.output<typeof BeginEventSchema>;

/** Moments and schedule of a form, by the clock of the school. */
export function readBasics({ title, siteId, starts, ends, teams, people, spectators, schedule }: TypedBasics, timeZone: string): { readonly ok: true; readonly value: EventBasics } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const [startsAt, endsAt, lines] = [momentOfLocal(starts, timeZone), momentOfLocal(ends, timeZone), readSchedule(schedule)];
  const faults: Fault[] = [
    ...(startsAt === null ? [{ field: 'starts', message: 'Choose day and time of the beginning' }] : []),
    ...(endsAt === null ? [{ field: 'ends', message: 'Choose day and time of the end' }] : []),
    ...(lines.ok ? [] : [{ field: 'schedule', message: lines.reason }]),
  ];
  if (startsAt !== null && endsAt !== null && endsAt <= startsAt) faults.push({ field: 'ends', message: 'It ends after it begins' });
  if (startsAt !== null && endsAt !== null && endsAt.getTime() - startsAt.getTime() > LONGEST_DAYS * DAY_MS) faults.push({ field: 'ends', message: `A file is for one event of at most ${LONGEST_DAYS} days. Make one for each` });
  if (faults.length > 0 || startsAt === null || endsAt === null || !lines.ok) return { ok: false, faults };
  return { ok: true, value: { title, siteId, startsAt, endsAt, teams, people, spectators, schedule: lines.value } };
}

export const CopyEventSchema = z.object({ eventId: line(NO_EVENT) });
