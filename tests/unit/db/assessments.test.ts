import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { documentOf } from '@/lib/assessments/version';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import { listVersions } from '@/lib/db/assessments/list-assessments';
import { readVersion } from '@/lib/db/assessments/read-version';
import { type AnswerToSave, saveAnswers } from '@/lib/db/assessments/save-answer';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');
const answer = (questionId: string, value: AnswerToSave['value'], seen = 0): Omit<AnswerToSave, 'versionId'> => ({ questionId, value, notSureTicks: [], note: '', seen, origin: 'typed' });

describe.each(ENGINES_HERE)('assessments on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  async function begun() {
    const { db } = await newDatabase();
    const ours = await schoolForTest(db, 'Ours');
    const result = await beginAssessment(db, ours.officer, AT, { siteId: ours.siteId, title: 'Room 9', season: '2026/27', copyFromId: null }, edition2.version);
    if (!result.ok) throw new Error(result.why);
    return { db, ours, versionId: result.versionId };
  }

  it('begin as a draft of their place and hold the edition they began with', async () => {
    const { db, ours, versionId } = await begun();
    expect(await readVersion(db, ours.scope, versionId)).toMatchObject({ state: 'draft', number: 1, title: 'Room 9', contentVersion: edition2.version, answers: [] });
    expect(await listVersions(db, ours.scope)).toHaveLength(1);
  });

  it('keep each answer with its note and its author, and make the document of them', async () => {
    const { db, ours, versionId } = await begun();
    expect(await saveAnswers(db, ours.officer, AT, versionId, [{ ...answer('team-packs', { packs: 24 }), note: 'from the register' }, answer('room-exits', 'not sure')])).toEqual({ ok: true, changed: true });
    const version = await readVersion(db, ours.scope, versionId);
    expect(version?.answers.find((one) => one.questionId === 'team-packs')).toMatchObject({ note: 'from the register', byName: ours.officer.name, revision: 1 });
    expect(version === null ? null : documentOf(version).answers).toEqual({ 'team-packs': { packs: 24 }, 'room-exits': 'not sure' });
  });

  it('write nothing over an answer that somebody changed meanwhile, and none of that page', async () => {
    const { db, ours, versionId } = await begun();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'two')]);
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'one', 1)]);
    const late = await saveAnswers(db, ours.officer, AT, versionId, [answer('team-packs', { packs: 3 }), answer('room-exits', 'not sure', 1)]);
    expect(late).toMatchObject({ ok: false, kept: { value: 'one', revision: 2 } });
    const version = await readVersion(db, ours.scope, versionId);
    expect(version?.answers.map((one) => one.questionId)).toEqual(['room-exits']);
  });

  it('of two who save one answer at the same moment only one gets through', async () => {
    const { db, ours, versionId } = await begun();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'two')]);
    const both = await Promise.all(['one', 'not sure'].map((value) => saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', value, 1)])));
    expect(both.filter((one) => one.ok)).toHaveLength(1);
  });

  it('stand in the log, whose chain holds', async () => {
    const { db, ours, versionId } = await begun();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'two')]);
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'two', 1)]);
    const kinds = (await db.auditEntry.findMany({ where: { ...ours.scope, subjectId: versionId }, orderBy: { sequence: 'asc' } })).map((entry) => entry.kind);
    expect(kinds).toEqual(['assessment.begun', 'answer.saved']);
    expect((await verifyLog(db, ours.scope.schoolId)).ok).toBe(true);
  });

  it('are not there for another school', async () => {
    const { db, versionId, ours } = await begun();
    const theirs = await schoolForTest(db, 'Theirs');
    expect(await readVersion(db, theirs.scope, versionId)).toBeNull();
    expect(await listVersions(db, theirs.scope)).toEqual([]);
    expect(await saveAnswers(db, theirs.officer, AT, versionId, [answer('room-exits', 'two')])).toMatchObject({ ok: false });
    expect(await beginAssessment(db, theirs.officer, AT, { siteId: ours.siteId, title: 'x', season: null, copyFromId: null }, edition2.version)).toMatchObject({ ok: false, field: 'siteId' });
  });

  it('do not change any more once they are closed, and the next is a copy only of what was signed', async () => {
    const { db, ours, versionId } = await begun();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'two')]);
    const copy = () => beginAssessment(db, ours.officer, AT, { siteId: ours.siteId, title: 'Room 9', season: '2027/28', copyFromId: versionId }, edition2.version);
    expect(await copy()).toMatchObject({ ok: false, field: 'copyFromId' });
    await db.assessmentVersion.updateMany({ where: { id: versionId }, data: { state: 'signed' } });
    expect(await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'one', 1)])).toMatchObject({ ok: false });
    const next = await copy();
    expect(next.ok && await readVersion(db, ours.scope, next.versionId)).toMatchObject({ number: 2, state: 'draft', answers: [{ questionId: 'room-exits', value: 'two', origin: 'copied' }] });
    expect(await copy()).toMatchObject({ ok: false, why: 'A next version is being prepared already' });
  });
});
