import { z } from 'zod';
import type { CsvColumn } from '@/lib/csv/write-csv';
import { CLOSING_POINTS, shortfallsKept } from './check-points';
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

/** What was not so: at the opening check of one that did not begin, or at the closing check. */
export function foundIn(session: Session): readonly string[] {
  const missing = openingShortfalls(session);
  if (missing.length > 0) return missing;
  return session.endedAt === null ? [] : shortfallsKept(CLOSING_POINTS, session.closing);
}

/** The same in one line. */
export function foundWords(session: Session): string {
  const found = foundIn(session);
  return found.length === 0 ? 'nothing found' : found.join('; ');
}

/** The latest session of each place. @param sessions the latest first */
export function lastOfEachPlace(sessions: readonly Session[]): readonly Session[] {
  return sessions.filter((session, index) => sessions.findIndex(({ siteId }) => siteId === session.siteId) === index);
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
  { head: 'Found', cell: foundWords },
  { head: 'Note', cell: ({ note }) => note },
  { head: 'Opened by', cell: ({ byName }) => byName },
];
