import { describe, expect, it } from 'vitest';
import { currentContent } from '@/lib/content/editions';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { loggedAt } from '@/lib/db/assessments/logged-at';
import type { Db } from '@/lib/db/client';
import { recordCheck } from '@/lib/db/packs/record-check';
import type { Member } from '@/lib/db/people/find-member';
import { packsToLog } from '@/lib/db/sessions/packs-to-log';
import { findSession, listSessions } from '@/lib/db/sessions/read-sessions';
import { writeClosing, writeCorrection, writeLog, writeOpening } from '@/lib/db/sessions/write-session';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { incidentForTest, packRowForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest, type SchoolForTest } from '@/tests/support/school-for-tests';
import { soundPack } from '@/tests/support/second-pack-limits';
import { openingForTest, SESSION_AT } from '@/tests/support/session-for-tests';

const LIMITS = currentContent.packLimits;
const at = (minutes: number): Date => new Date(SESSION_AT.getTime() + minutes * 60_000);

describe.each(ENGINES_HERE)('the log of sessions on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function prepared() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db, 'Ours');
    const { officer } = school;
    const helper = await memberForTest(db, school.scope, 'helper', 'S. T.');
    const other = await memberForTest(db, school.scope, 'helper', 'J. P.');
    const fit = await packRowForTest(db, school.scope, 'W-01');
    const found = { measures: soundPack, cellVolts: [], resistance: [], result: packVerdict(LIMITS, soundPack) };
    await recordCheck(db, officer, at(-60), { packId: fit, purpose: 'plain', contentVersion: currentContent.version, note: null, found });
    const unchecked = await packRowForTest(db, school.scope, 'W-02');
    return { db, school, officer, helper, other, fit, unchecked };
  }
  const opened = async (db: Db, by: Member, { siteId }: SchoolForTest, given = {}): Promise<string> => {
    const written = await writeOpening(db, by, at(0), openingForTest({ siteId, ...given }), at(0));
    if (!written.ok) throw new Error(JSON.stringify(written.faults));
    return written.id;
  };
  const press = (db: Db, by: Member, sessionId: string, revision: number, packs: string[], what: 'charge' | 'crash' = 'charge') => writeLog(db, by, at(10), LIMITS, { sessionId, revision, packs, what });

  it('opens, logs, corrects and closes, each with its entry, and the chain holds', async () => {
    const { db, school, helper, fit } = await prepared();
    const id = await opened(db, helper, school);
    expect(await press(db, helper, id, 1, [fit])).toMatchObject({ ok: true });
    expect(await press(db, helper, id, 2, [fit])).toMatchObject({ ok: true });
    expect(await press(db, helper, id, 3, [fit], 'crash')).toMatchObject({ ok: true });
    expect(await writeCorrection(db, helper, at(20), LIMITS, { sessionId: id, revision: 4, packId: fit, charges: 3, crashes: 1, reason: 'one was forgotten' })).toMatchObject({ ok: true });
    expect(await writeClosing(db, helper, at(60), { sessionId: id, revision: 5, 'storage-charge': 'yes', 'chargers-off': 'yes', 'put-away': 'yes', 'counted': 'yes', peoplePresent: 14, note: null })).toMatchObject({ ok: true });
    expect(await findSession(db, school.scope, id)).toMatchObject({ endedAt: at(60), peoplePresent: 14, packs: [{ label: 'W-01', charges: 3, crashes: 1 }] });
    const kinds = (await db.auditEntry.findMany({ where: { subjectId: id }, orderBy: { sequence: 'asc' } })).map(({ kind }) => kind);
    expect(kinds).toEqual(['session.opened', 'session.charges-logged', 'session.charges-logged', 'session.crashes-logged', 'session.corrected', 'session.closed']);
    expect((await verifyLog(db, school.scope.schoolId)).ok).toBe(true);
  });

  it('keeps an opening check that is not good as a session that does not begin', async () => {
    const { db, school, helper, fit } = await prepared();
    const id = await opened(db, helper, school, { detectors: 'no' });
    expect(await findSession(db, school.scope, id)).toMatchObject({ endedAt: at(0), opening: { detectors: 'no' } });
    expect(await press(db, helper, id, 1, [fit])).toMatchObject({ ok: false });
    expect(await opened(db, helper, school)).not.toBe(id);
  });

  it('offers for charging only what was checked and found fit', async () => {
    const { db, school, helper, fit, unchecked } = await prepared();
    const id = await opened(db, helper, school);
    expect((await packsToLog(db, school.scope, LIMITS, new Date())).map(({ label, notToCharge }) => [label, notToCharge === null])).toEqual([['W-01', true], ['W-02', false]]);
    expect(await press(db, helper, id, 1, [fit, unchecked])).toMatchObject({ ok: false });
    expect(await db.sessionPack.count()).toBe(0);
  });

  it('counts two presses of one page once, also at the same moment', async () => {
    const { db, school, helper, other, fit } = await prepared();
    const id = await opened(db, helper, school);
    const both = await Promise.all([press(db, helper, id, 1, [fit]), press(db, other, id, 1, [fit])]);
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
    expect((await findSession(db, school.scope, id))?.packs).toMatchObject([{ charges: 1 }]);
  });

  it('lets another helper log, but not put a count of somebody else right', async () => {
    const { db, school, helper, other, officer, fit } = await prepared();
    const id = await opened(db, helper, school);
    expect(await press(db, other, id, 1, [fit])).toMatchObject({ ok: true });
    const correction = { sessionId: id, revision: 2, packId: fit, charges: 9, crashes: 0, reason: 'x' };
    expect(await writeCorrection(db, other, at(20), LIMITS, correction)).toMatchObject({ ok: false });
    expect(await writeCorrection(db, officer, at(20), LIMITS, correction)).toMatchObject({ ok: true });
  });

  it('is not to be had from another school', async () => {
    const { db, school, helper, fit } = await prepared();
    const id = await opened(db, helper, school);
    const theirs = await schoolForTest(db, 'Theirs');
    const stranger: Member = { ...theirs.officer, role: 'safety-officer' };
    expect(await press(db, stranger, id, 1, [fit])).toMatchObject({ ok: false });
    expect(await findSession(db, theirs.scope, id)).toBeNull();
    expect(await listSessions(db, theirs.scope)).toEqual([]);
    expect(await writeOpening(db, stranger, at(0), openingForTest({ siteId: school.siteId }), at(0))).toMatchObject({ ok: false, faults: [{ field: 'siteId' }] });
  });

  it('counts for an assessment what was logged at its site, of no other school and no other site', async () => {
    const { db, school, officer, fit } = await prepared();
    await press(db, officer, await opened(db, officer, school), 1, [fit]);
    await incidentForTest(db, officer, { kinds: ['fire'], where: { siteId: school.siteId, areaId: null, place: null } });
    const other = await schoolForTest(db, 'Theirs');
    const theirs: Member = { ...other.officer, role: 'safety-officer' };
    await opened(db, theirs, other);
    await incidentForTest(db, theirs, { kinds: ['fire'], where: { siteId: null, areaId: null, place: 'yard' } });
    const logged = await loggedAt(db, school.scope, school.siteId, at(-1));
    expect(logged.sessions.map(({ packs }) => packs.map(({ charges }) => charges))).toEqual([[1]]);
    expect(logged.incidents.map(({ facts }) => facts.kinds)).toEqual([['fire']]);
    expect((await loggedAt(db, school.scope, other.siteId, at(-1))).sessions).toEqual([]);
    expect((await loggedAt(db, school.scope, school.siteId, at(1))).sessions).toEqual([]);
  });
});
