import type { EventAdult, EventBasics } from './event';
import type { EventDetails } from './details';
import { writeSchedule } from './schedule';

type Scalar = string | number | boolean | null;

/** What is different, field by field, as the log keeps it. */
export function changesOf(before: Readonly<Record<string, Scalar>>, after: Readonly<Record<string, Scalar>>): Record<string, { from: Scalar; to: Scalar }> {
  return Object.fromEntries(Object.keys(after).filter((name) => before[name] !== after[name]).map((name) => [name, { from: before[name] ?? null, to: after[name] ?? null }]));
}

export const flatBasics = ({ title, siteId, startsAt, endsAt, teams, people, spectators, schedule }: EventBasics): Record<string, Scalar> =>
  ({ title, siteId, startsAt: startsAt.toISOString(), endsAt: endsAt.toISOString(), teams, people, spectators, schedule: writeSchedule(schedule) });

export function flatDetails(details: Partial<EventDetails>): Record<string, Scalar> {
  return Object.fromEntries(Object.entries(details).map(([name, value]) => [name, Array.isArray(value) ? value.join(' ') : (value ?? null)]));
}

/** Of the adults the log keeps what they do, not who they are nor how they are reached: an entry cannot be removed. */
export const flatAdults = (adults: readonly EventAdult[]): Record<string, Scalar> => ({ adults: adults.map(({ parts, phone }) => `${parts.join('+')}${phone === null ? '' : ' with telephone'}`).join('; ') });
