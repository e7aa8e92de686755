import { z } from 'zod';
import type { CsvColumn } from '@/lib/csv/write-csv';
import { CLOSING_POINTS, shortfalls } from './check-points';
import { openingShortfalls, type Session, SESSION_STATE_WORDS, stateOfSession, totalsOf } from './session';

/** A search as an address holds it; what cannot be read narrows nothing. */
export const SessionQuerySchema = z.object({ find: z.string().trim().max(80).catch('') });
export type SessionQuery = z.output<typeof SessionQuerySchema>;

/** The sessions in which every word of the search stands somewhere. */
export function narrowedSessions(sessions: readonly Session[], { find }: SessionQuery): readonly Session[] {
  const words = find.toLowerCase().split(/\s+/u).filter((word) => word !== '');
  return sessions.filter((session) => {
    const texts = [session.siteName, session.byName, session.note ?? '', session.startedAt.toISOString().slice(0, 10), SESSION_STATE_WORDS[stateOfSession(session)], ...session.packs.map(({ label }) => label)];
    return words.every((word) => texts.some((text) => text.toLowerCase().includes(word)));
  });
}

/** What was found at the beginning and at the end, in one line. */
export function foundIn(session: Session): string {
  const found = [...openingShortfalls(session), ...(session.endedAt === null || stateOfSession(session) === 'stopped' ? [] : shortfalls(CLOSING_POINTS, session.closing))];
  return found.length === 0 ? 'nothing found' : found.join('; ');
}

export const SESSION_COLUMNS: readonly CsvColumn<Session>[] = [
  { head: 'Began (UTC)', cell: ({ startedAt }) => startedAt.toISOString().slice(0, 16) },
  { head: 'Ended (UTC)', cell: (session) => (stateOfSession(session) === 'stopped' ? null : (session.endedAt?.toISOString().slice(0, 16) ?? null)) },
  { head: 'Place', cell: ({ siteName }) => siteName },
  { head: 'State', cell: (session) => SESSION_STATE_WORDS[stateOfSession(session)] },
  { head: 'People present', cell: ({ peoplePresent }) => peoplePresent },
  { head: 'Packs', cell: (session) => totalsOf(session).packs },
  { head: 'Charges', cell: (session) => totalsOf(session).charges },
  { head: 'Crashes', cell: (session) => totalsOf(session).crashes },
  { head: 'Found', cell: foundIn },
  { head: 'Note', cell: ({ note }) => note },
  { head: 'Opened by', cell: ({ byName }) => byName },
];
