import { OPENING_POINTS, type PointAnswers } from '@/lib/sessions/check-points';
import type { OpenSessionInput } from '@/lib/sessions/open-session';
import type { LoggedPack, Session } from '@/lib/sessions/session';

export const SESSION_AT = new Date('2026-11-23T15:30:00.000Z');

/** Every point of the opening check answered with yes. */
export const GOOD_OPENING: PointAnswers = Object.fromEntries(OPENING_POINTS.map(({ id }) => [id, 'yes']));

export function logged(label: string, charges: number, crashes: number | null = null): LoggedPack {
  return { packId: label, label, charges, crashes };
}

/** A session that is open; whatever matters to a test is given. */
export function sessionForTest(given: Partial<Session> = {}): Session {
  return { id: 'session-1', siteId: 'site-1', siteName: 'Hall', startedAt: SESSION_AT, endedAt: null, peoplePresent: 12, opening: GOOD_OPENING, closing: {}, note: null, byId: 'person-1', byName: 'S. T.', revision: 1, packs: [], ...given };
}

export function openingForTest(given: Partial<OpenSessionInput> = {}): OpenSessionInput {
  return { siteId: 'site-1', startedAt: null, 'detectors': 'yes', 'way-out': 'yes', 'first-aider': 'yes', 'adult': 'yes', 'outdoor-spot': 'yes', peoplePresent: 12, note: null, ...given };
}
