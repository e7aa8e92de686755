import { describe, expect, it } from 'vitest';
import { shortfalls, OPENING_POINTS } from '@/lib/sessions/check-points';
import { closeSession, type CloseSessionInput } from '@/lib/sessions/close-session';
import { correctLog, logPacks, type PackToLog } from '@/lib/sessions/log-packs';
import { OpenSessionSchema, openSession } from '@/lib/sessions/open-session';
import { stateOfSession, totalsOf } from '@/lib/sessions/session';
import { foundWords, lastOfEachPlace, narrowedSessions } from '@/lib/sessions/session-list';
import { GOOD_OPENING, logged, openingForTest, SESSION_AT, sessionForTest } from '@/tests/support/session-for-tests';

const LATER = new Date(SESSION_AT.getTime() + 3_600_000);
const REGISTER: readonly PackToLog[] = [{ id: 'W-01', label: 'W-01', notToCharge: null }, { id: 'W-02', label: 'W-02', notToCharge: null }, { id: 'W-03', label: 'W-03', notToCharge: 'it is isolated' }];
const open = (given: Parameters<typeof openingForTest>[0] = {}, rest = {}) => openSession({ id: 's', input: openingForTest(given), startedAt: SESSION_AT, now: LATER, openThere: false, ...rest });
const closing = (given: Partial<CloseSessionInput> = {}): CloseSessionInput => ({ sessionId: 'session-1', revision: 1, 'storage-charge': 'yes', 'chargers-off': 'yes', 'put-away': 'yes', 'counted': 'yes', peoplePresent: null, note: null, ...given });

describe('the opening check', () => {
  it('opens a session only when every point is answered with yes', () => {
    expect(open()).toMatchObject({ ok: true, change: { endedAt: null }, events: [{ kind: 'session.opened' }] });
    for (const { id } of OPENING_POINTS) {
      expect(open({ [id]: 'no' })).toMatchObject({ ok: true, change: { endedAt: SESSION_AT }, events: [{ kind: 'session.stopped' }] });
      expect(open({ [id]: 'not sure' })).toMatchObject({ ok: true, change: { endedAt: SESSION_AT } });
    }
  });

  it('takes a point nobody answered, or not sure of, for not so', () => {
    expect(shortfalls(OPENING_POINTS, {})).toHaveLength(OPENING_POINTS.length);
    expect(shortfalls(OPENING_POINTS, { ...GOOD_OPENING, 'way-out': 'not sure' })).toEqual(['nobody is sure whether a way out is not clear']);
    expect(stateOfSession(sessionForTest({ opening: {} }))).toBe('stopped');
  });

  it('holds a check that is kept to the points it was asked', () => {
    const older = Object.fromEntries(Object.entries(GOOD_OPENING).filter(([point]) => point !== 'outdoor-spot'));
    expect(stateOfSession(sessionForTest({ opening: older }))).toBe('open');
    expect(stateOfSession(sessionForTest({ opening: { ...older, detectors: 'no' } }))).toBe('stopped');
  });

  it('asks for each point, and preselects none', () => {
    const parsed = OpenSessionSchema.safeParse({ siteId: 'site-1' });
    expect(parsed.error?.issues.map(({ path }) => path[0])).toEqual(OPENING_POINTS.map(({ id }) => id));
  });

  it('refuses a time that has not come, one too long ago, and a second session in the same place', () => {
    expect(open({}, { now: new Date(SESSION_AT.getTime() - 1) })).toMatchObject({ ok: false, faults: [{ field: 'startedAt' }] });
    expect(open({}, { now: new Date(SESSION_AT.getTime() + 15 * 86_400_000) })).toMatchObject({ ok: false, faults: [{ field: 'startedAt' }] });
    expect(open({}, { openThere: true })).toMatchObject({ ok: false, faults: [{ field: 'siteId' }] });
  });
});

describe('logging', () => {
  const log = (what: 'charge' | 'crash', packs: string[], session = sessionForTest({ packs: [logged('W-01', 2)] }), revision = 1) => logPacks(session, { sessionId: 'session-1', revision, packs, what }, REGISTER);

  it('adds one charge to each pack and says nothing of crashes', () => {
    expect(log('charge', ['W-01', 'W-02'])).toMatchObject({ ok: true, change: [{ packId: 'W-01', charges: 3, crashes: null }, { packId: 'W-02', charges: 1, crashes: null }] });
  });

  it('adds a crash without a charge, also of a pack that must not be charged', () => {
    expect(log('crash', ['W-03'])).toMatchObject({ ok: true, change: [{ packId: 'W-03', charges: 0, crashes: 1 }] });
  });

  it('does not log a charge of a pack that must not be charged, and sends whoever did it to the incidents', () => {
    expect(log('charge', ['W-01', 'W-03'])).toMatchObject({ ok: false, faults: [{ message: expect.stringContaining('W-03, it is isolated') as string }] });
  });

  it('refuses a press on an old page, so that a double press counts once', () => {
    expect(log('charge', ['W-01'], sessionForTest({ revision: 2 }))).toMatchObject({ ok: false, faults: [{ message: expect.stringContaining('press again') as string }] });
  });

  it('refuses nothing chosen, a stranger, a closed session and one that did not begin', () => {
    expect(log('charge', [])).toMatchObject({ ok: false, faults: [{ field: 'packs' }] });
    expect(log('charge', ['X-99'])).toMatchObject({ ok: false, faults: [{ field: 'packs' }] });
    expect(log('charge', ['W-01'], sessionForTest({ endedAt: LATER }))).toMatchObject({ ok: false });
    expect(log('crash', ['W-01'], sessionForTest({ opening: {}, endedAt: SESSION_AT }))).toMatchObject({ ok: false });
  });

  it('says a count anew with what stood there before', () => {
    const corrected = correctLog(sessionForTest({ endedAt: LATER, packs: [logged('W-01', 5)] }), { sessionId: 'session-1', revision: 1, packId: 'W-01', charges: 2, crashes: 0, reason: 'pressed twice' }, REGISTER);
    expect(corrected).toMatchObject({ ok: true, change: { charges: 2, crashes: 0 }, events: [{ kind: 'session.corrected', data: { chargesFrom: 5, chargesTo: 2, crashesFrom: null, crashesTo: 0 } }] });
  });
});

describe('the closing check', () => {
  it('closes, and keeps what was counted at the beginning when nobody counted again', () => {
    expect(closeSession(sessionForTest({ packs: [logged('W-01', 2), logged('W-02', 1)] }), closing(), LATER)).toMatchObject({ ok: true, change: { endedAt: LATER, peoplePresent: 12 }, events: [{ data: { packs: 2, charges: 3 } }] });
  });

  it('wants a word about what is not so', () => {
    expect(closeSession(sessionForTest(), closing({ 'chargers-off': 'not sure' }), LATER)).toMatchObject({ ok: false, faults: [{ field: 'note' }] });
    expect(closeSession(sessionForTest(), closing({ 'chargers-off': 'no', note: 'K. M. goes back.' }), LATER)).toMatchObject({ ok: true });
  });

  it('closes nothing twice, and nothing that did not begin', () => {
    expect(closeSession(sessionForTest({ endedAt: LATER }), closing(), LATER).ok).toBe(false);
    expect(closeSession(sessionForTest({ opening: {} }), closing(), LATER).ok).toBe(false);
  });
});

describe('the list', () => {
  it('finds by place, pack, person and state, every word of it', () => {
    const sessions = [sessionForTest({ id: 'a', siteName: 'Gym', packs: [logged('W-07', 1)] }), sessionForTest({ id: 'b', opening: {} })];
    const found = (find: string) => narrowedSessions(sessions, { find }).map(({ id }) => id);
    expect(found('w-07 gym')).toEqual(['a']);
    expect(found('not begun')).toEqual(['b']);
    expect(found('')).toEqual(['a', 'b']);
  });

  it('knows crashes as unknown until somebody logged one, and the latest of each place', () => {
    expect(totalsOf(sessionForTest({ packs: [logged('W-01', 2)] }))).toEqual({ packs: 1, charges: 2, crashes: null });
    expect(totalsOf(sessionForTest({ packs: [logged('W-01', 2, 1), logged('W-02', 1)] })).crashes).toBe(1);
    expect(lastOfEachPlace([sessionForTest({ id: 'new' }), sessionForTest({ id: 'old' }), sessionForTest({ id: 'other', siteId: 'site-2' })]).map(({ id }) => id)).toEqual(['new', 'other']);
    expect(foundWords(sessionForTest())).toBe('nothing found');
  });
});
