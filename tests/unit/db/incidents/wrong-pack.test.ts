import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { correctFact } from '@/lib/db/incidents/correct';
import { findIncident } from '@/lib/db/incidents/read-incidents';
import { rightPackOfIncident } from '@/lib/db/incidents/right-wrong-pack';
import { isolatePacks } from '@/lib/db/packs/isolate-packs';
import { packHistory } from '@/lib/db/packs/read-packs';
import { runInTransaction } from '@/lib/db/transaction';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { INCIDENT_AT, incidentForTest, packRowForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const later = (minutes: number) => new Date(INCIDENT_AT.getTime() + minutes * 60_000);
const ASKED = { insteadLabel: null, reason: 'W-11 was in the case all day', sure: 'yes' } as const;

describe.each(ENGINES_HERE)('an incident that names the wrong pack on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    const organiser = await memberForTest(db, school.scope, 'organiser', 'K. M.');
    const packId = await packRowForTest(db, school.scope, 'W-11');
    const incidentId = await incidentForTest(db, organiser, { packs: [{ label: 'W-11', part: 'involved' }] });
    return { db, ...school, organiser, packId, incidentId };
  }

  it('is corrected by the officer: the pack leaves isolation, the one that was meant goes in, all of it is in the log', async () => {
    const { db, scope, officer, packId, incidentId } = await setting();
    const meant = await packRowForTest(db, scope, 'W-12');
    expect(await rightPackOfIncident(db, officer, later(1), { incidentId, packId, ...ASKED, insteadLabel: 'w-12' })).toEqual({ ok: true });
    const [incident, wrong, right] = await Promise.all([findIncident(db, scope, incidentId), packHistory(db, scope, packId), packHistory(db, scope, meant)]);
    expect([wrong?.pack.state, right?.pack.state]).toEqual(['watch', 'isolated']);
    expect(wrong?.changes[0]).toMatchObject({ from: 'isolated', to: 'watch', incidentId, byName: 'R. O.' });
    expect(incident?.facts.packs).toEqual([{ label: 'w-12', part: 'involved' }]);
    expect(incident?.first.packs).toEqual([{ label: 'W-11', part: 'involved' }]);
    expect(incident?.corrections).toMatchObject([{ field: 'packs', reason: `Wrong pack named. ${ASKED.reason}` }]);
    expect(incident?.packs.map(({ label }) => label)).toEqual(['W-12']);
    const kinds = (await db.auditEntry.findMany({ where: scope, orderBy: { sequence: 'asc' } })).map(({ kind }) => kind).slice(-3);
    expect(kinds).toEqual(['incident.corrected', 'pack.state-changed', 'pack.state-changed']);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
  });

  it('is corrected also when somebody has taken its name out before', async () => {
    const { db, scope, officer, organiser, packId, incidentId } = await setting();
    await correctFact(db, organiser, later(1), { incidentId, field: 'packs', after: [], reason: 'misread the label' });
    expect(await rightPackOfIncident(db, officer, later(2), { incidentId, packId, ...ASKED })).toEqual({ ok: true });
    expect((await packHistory(db, scope, packId))?.pack.state).toBe('watch');
  });

  it('does not free a pack that is isolated for another reason too', async () => {
    const { db, scope, officer, packId, incidentId } = await setting();
    await runInTransaction(db, (tx) => isolatePacks({ tx, scope, by: officer, at: later(1) }, [packId], { reason: 'swollen', cause: 'sign' }));
    expect(await rightPackOfIncident(db, officer, later(2), { incidentId, packId, ...ASKED })).toMatchObject({ ok: false, faults: [{ message: expect.stringContaining('swollen') as string }] });
    expect((await packHistory(db, scope, packId))?.pack.state).toBe('isolated');
  });

  it('is not corrected by whoever recorded it, nor by the officer of another school', async () => {
    const { db, scope, organiser, packId, incidentId } = await setting();
    const other = await schoolForTest(db, 'Other');
    for (const by of [organiser, other.officer]) expect(await rightPackOfIncident(db, by, later(1), { incidentId, packId, ...ASKED })).toMatchObject({ ok: false });
    expect((await packHistory(db, scope, packId))?.pack.state).toBe('isolated');
  });
});
