import { z } from 'zod';
import type { CsvColumn } from '@/lib/csv/write-csv';
import { EVENT_STATES, type EventState, eventStateWords } from './standing';

/** A row of the list. */
export interface ListedEvent {
  readonly id: string;
  readonly title: string;
  readonly state: EventState;
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly siteName: string;
  readonly packs: number;
  readonly teams: number | null;
  readonly people: number | null;
  readonly preparedByName: string;
}

/** What a list is asked for in its address; what cannot be read asks for nothing. */
export const EventQuerySchema = z.object({
  q: z.string().trim().max(100).catch('').default(''),
  state: z.enum(['', ...EVENT_STATES]).catch('').default(''),
  when: z.enum(['', 'coming', 'past']).catch('').default(''),
});
export type EventQuery = z.output<typeof EventQuerySchema>;

/** The events that hold every word asked for: those to come first, the next before the later; then the past, the latest first. */
export function searchEvents(events: readonly ListedEvent[], { q, state, when }: EventQuery, now: Date): readonly ListedEvent[] {
  const wanted = q.toLowerCase().split(/\s+/).filter((word) => word !== '');
  const shown = events.filter((event) => {
    if (state !== '' && event.state !== state) return false;
    if (when !== '' && isOver(event, now) !== (when === 'past')) return false;
    const words = `${event.title} ${event.siteName} ${event.preparedByName}`.toLowerCase();
    return wanted.every((word) => words.includes(word));
  });
  const coming = shown.filter((event) => !isOver(event, now)).sort((one, other) => one.startsAt.getTime() - other.startsAt.getTime());
  const past = shown.filter((event) => isOver(event, now)).sort((one, other) => other.startsAt.getTime() - one.startsAt.getTime());
  return [...coming, ...past];
}

export const isOver = ({ endsAt }: Pick<ListedEvent, 'endsAt'>, now: Date): boolean => endsAt < now;

/** The columns of the exported table. */
export const EVENT_COLUMNS: readonly CsvColumn<ListedEvent>[] = [
  { head: 'Event', cell: ({ title }) => title },
  { head: 'State', cell: ({ state }) => eventStateWords(state) },
  { head: 'Begins (UTC)', cell: ({ startsAt }) => startsAt.toISOString() },
  { head: 'Ends (UTC)', cell: ({ endsAt }) => endsAt.toISOString() },
  { head: 'Place', cell: ({ siteName }) => siteName },
  { head: 'Packs', cell: ({ packs }) => packs },
  { head: 'Teams', cell: ({ teams }) => teams },
  { head: 'People of the teams', cell: ({ people }) => people },
  { head: 'Prepared by', cell: ({ preparedByName }) => preparedByName },
];
