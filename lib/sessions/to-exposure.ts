import { type Session, stateOfSession, sum } from './session';

/** What was logged in a period, by the content's exposure base; a base that nobody logged is left out, never zero. */
export interface LoggedInPeriod { readonly from: Date; readonly to: Date; readonly byBase: Readonly<Record<string, number>> }

type Logged = Pick<Session, 'startedAt' | 'endedAt' | 'opening' | 'packs'>;

/**
 * Charges, sessions, flights and crashes of a log, for the record the engine learns from. A charge of the log has an
 * adult beside it, since nothing is charged otherwise (watchedCharges); a flight is counted for each charge, as the
 * content does (flights = packs · sessions · chargesPerPackSession); crashes and what was charged after one only when
 * somebody logged crashes at all. Sessions that did not begin do not count.
 * @param from first moment of the period
 * @param to last moment; a session counts by its beginning
 * @param flies whether the team flies at the place
 */
export function sessionsToExposure(sessions: readonly Logged[], { from, to, flies }: { readonly from: Date; readonly to: Date; readonly flies: boolean }): LoggedInPeriod {
  const held = sessions.filter((session) => stateOfSession(session) !== 'stopped' && session.startedAt >= from && session.startedAt <= to);
  const packs = held.flatMap((session) => session.packs);
  const charges = sum(packs.map((pack) => pack.charges));
  const known = packs.flatMap(({ crashes }) => (crashes === null ? [] : [crashes]));
  const byBase = {
    ...(held.length === 0 ? {} : { sessions: held.length }),
    ...(charges === 0 ? {} : { charges, watchedCharges: charges, ...(flies ? { flights: charges } : {}) }),
    ...(known.length === 0 ? {} : { crashes: sum(known), crashedCharges: sum(known) }),
  };
  return { from, to, byBase };
}
