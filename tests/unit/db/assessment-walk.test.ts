import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { scopeFingerprint } from '@/lib/assessments/version';
import { answerByLink } from '@/lib/db/assessments/answer-by-link';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import { beginWithAnswers } from '@/lib/db/assessments/begin-with-answers';
import { findCaretakerLink, listCaretakerLinks, revokeCaretakerLink, sendQuestions } from '@/lib/db/assessments/caretaker-links';
import { changeScope, changeSettings } from '@/lib/db/assessments/change-scope';
import { listEvidence, readEvidence } from '@/lib/db/assessments/evidence';
import { lastSave } from '@/lib/db/assessments/last-save';
import { readVersion } from '@/lib/db/assessments/read-version';
import { type NewAnswer, saveAnswers } from '@/lib/db/assessments/save-answer';
import { saveWholePage } from '@/lib/db/assessments/save-page';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { readPutAside } from '@/lib/db/packs/read-put-aside';
import { DAY_MS } from '@/lib/units/time';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');
const LATER = new Date('2026-11-25T09:00:00.000Z');
const begin = { title: 'Room 9', season: '2026/27', copyFromId: null };
const answer = (questionId: string, value: NewAnswer['value'], seen = 0): NewAnswer => ({ questionId, value, notSureTicks: [], note: '', seen, origin: 'typed' });
const seal = (id: string) => `seal of ${id}`;

describe.each(ENGINES_HERE)('the walk on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  async function begun() {
    const { db } = await newDatabase();
    const ours = await schoolForTest(db, 'Ours');
    const result = await beginAssessment(db, ours.officer, AT, { ...begin, siteId: ours.siteId }, edition2.version);
    if (!result.ok) throw new Error(result.why);
    const version = async () => (await readVersion(db, ours.scope, result.versionId))!;
    return { db, ours, versionId: result.versionId, version };
  }

  it('tells from the log what somebody’s last saving changed, and of nobody else', async () => {
    const { db, ours, versionId } = await begun();
    expect(await lastSave(db, ours.scope, versionId, ours.officer.personId)).toBeNull();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'yes')]);
    await saveAnswers(db, ours.officer, LATER, versionId, [answer('room-exits', 'one', 1), answer('team-packs', { packs: 24 })]);
    expect(await lastSave(db, ours.scope, versionId, ours.officer.personId)).toEqual({ at: LATER, before: { 'room-exits': 'yes', 'team-packs': null } });
    expect(await lastSave(db, ours.scope, versionId, 'somebody else')).toBeNull();
  });

  it('writes down the visit once, also while answers change, and not over what somebody else wrote', async () => {
    const { db, ours, versionId, version } = await begun();
    const before = scopeFingerprint(await version());
    const visit = { versionId, before, visited: 'yes' as const, visitedOn: '2026-11-20', visitedBy: 'R. O., deputy head', seen: 'the room', onTrust: null };
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-exits', 'yes')]);
    expect(await changeScope(db, ours.officer, LATER, visit)).toEqual({ ok: true });
    expect(await version()).toMatchObject({ visited: true, visitedOn: '2026-11-20', scope: { seen: 'the room', onTrust: '', visitedBy: 'R. O., deputy head' } });
    expect(await changeScope(db, ours.officer, LATER, { ...visit, seen: 'another' })).toMatchObject({ ok: false });
    expect((await version()).scope.seen).toBe('the room');
    await db.assessmentVersion.updateMany({ data: { state: 'signed' } });
    expect(await changeSettings(db, ours.officer, LATER, { versionId, matrix: 'three-by-three', effortBudget: 12 })).toMatchObject({ ok: false });
  });

  it('keeps the matrix and the effort, and logs the change', async () => {
    const { db, ours, versionId, version } = await begun();
    expect(await changeSettings(db, ours.officer, AT, { versionId, matrix: 'mil-std-882e', effortBudget: null })).toEqual({ ok: true });
    expect((await version()).settings).toEqual({ matrix: 'mil-std-882e' });
    expect(await db.auditEntry.count({ where: { ...ours.scope, kind: 'assessment.changed' } })).toBe(1);
    expect(await changeSettings(db, (await schoolForTest(db, 'Theirs')).officer, AT, { versionId, matrix: 'five-by-five', effortBudget: 3 })).toMatchObject({ ok: false });
  });

  it('sends questions by a link that is found by its seal alone, and marks them as waiting without disturbing anybody', async () => {
    const { db, ours, versionId, version } = await begun();
    await saveAnswers(db, ours.officer, AT, versionId, [answer('room-ach', { chargingAch: 2 })]);
    expect(await sendQuestions(db, ours.officer, AT, { versionId, forWhom: 'Mr Hale', days: 3, questions: ['room-ach', 'room-building'] }, seal)).toEqual({ ok: true });
    const [link] = await listCaretakerLinks(db, ours.scope, versionId);
    expect(await findCaretakerLink(db, seal(link!.id))).toEqual(link);
    expect(await findCaretakerLink(db, link!.id)).toBeNull();
    const waiting = new Map((await version()).answers.map((one) => [one.questionId, one]));
    expect(waiting.get('room-ach')).toMatchObject({ waitsFor: 'Mr Hale', revision: 1, value: { chargingAch: 2 } });
    expect(waiting.get('room-building')).toMatchObject({ waitsFor: 'Mr Hale', revision: 0, value: null });
    expect(await saveAnswers(db, ours.officer, LATER, versionId, [answer('room-building', 'not sure', 0)])).toEqual({ ok: true, changed: true });
    expect((await version()).answers.find((one) => one.questionId === 'room-building')).toMatchObject({ waitsFor: '', revision: 1 });
  });

  it('takes the answers of somebody without an account under their name, while the link works', async () => {
    const { db, ours, versionId, version } = await begun();
    await sendQuestions(db, ours.officer, AT, { versionId, forWhom: 'Mr Hale', days: 3, questions: ['room-ach'] }, seal);
    const link = (await listCaretakerLinks(db, ours.scope, versionId))[0]!;
    const say = (at: Date, value: number, seen: number) => answerByLink(db, link, 'T. Hale (by link)', at, seal(link.id), [{ ...answer('room-ach', { chargingAch: value }, seen), origin: 'caretaker' }]);
    expect(await say(LATER, 3, 0)).toEqual({ ok: true, changed: true });
    expect((await version()).answers[0]).toMatchObject({ value: { chargingAch: 3 }, byName: 'T. Hale (by link)', origin: 'caretaker', waitsFor: '' });
    expect(await say(LATER, 4, 0)).toMatchObject({ ok: false, kept: { value: { chargingAch: 3 } } });
    expect(await say(new Date(AT.getTime() + 3 * DAY_MS), 4, 1)).toMatchObject({ ok: false });
    expect(await revokeCaretakerLink(db, ours.officer, LATER, link.id)).toEqual({ ok: true });
    expect(await say(LATER, 4, 1)).toMatchObject({ ok: false, why: expect.stringContaining('taken back') as string });
    const kinds = (await db.auditEntry.findMany({ where: { ...ours.scope, subjectId: versionId }, orderBy: { sequence: 'asc' } })).map((entry) => [entry.kind, entry.actorId === null ? 'nobody' : 'somebody']);
    expect(kinds.slice(1)).toEqual([['questions.sent', 'somebody'], ['answer.waits', 'somebody'], ['answer.saved', 'nobody'], ['questions.answered', 'nobody'], ['questions.revoked', 'somebody']]);
    expect((await verifyLog(db, ours.scope.schoolId)).ok).toBe(true);
  });

  it('frees the questions of a link that is taken back, unless another asks for them', async () => {
    const { db, ours, versionId, version } = await begun();
    const send = (questions: string[]) => sendQuestions(db, ours.officer, AT, { versionId, forWhom: 'Mr Hale', days: 3, questions }, seal);
    await send(['room-ach', 'room-fan']);
    const first = (await listCaretakerLinks(db, ours.scope, versionId))[0]!;
    await send(['room-fan']);
    await revokeCaretakerLink(db, ours.officer, LATER, first.id);
    expect(Object.fromEntries((await version()).answers.map((one) => [one.questionId, one.waitsFor]))).toEqual({ 'room-ach': '', 'room-fan': 'Mr Hale' });
    expect(await revokeCaretakerLink(db, (await schoolForTest(db, 'Theirs')).officer, LATER, first.id)).toMatchObject({ ok: false });
    await db.assessmentVersion.updateMany({ data: { state: 'with-officer' } });
    expect(await send(['room-ach'])).toMatchObject({ ok: false });
  });

  it('keeps photos with the page they were sent with, and takes one away for good', async () => {
    const { db, ours, versionId, version } = await begun();
    const photo = { questionId: 'room-exits', bytes: new Uint8Array([1, 2, 3]), mimeType: 'image/jpeg', sha256: 'a'.repeat(64), widthPx: 4, heightPx: 3 };
    const page = { versionId, answers: [answer('room-exits', 'yes')], photos: [photo], drop: undefined };
    expect(await saveWholePage(db, ours.officer, AT, page)).toEqual({ ok: true, changed: true });
    expect(await saveWholePage(db, ours.officer, LATER, { ...page, answers: [answer('room-exits', 'no', 0)] })).toMatchObject({ ok: false });
    const [kept, ...others] = await listEvidence(db, ours.scope, versionId);
    expect(others).toEqual([]);
    const theirs = await schoolForTest(db, 'Theirs');
    expect((await readEvidence(db, ours.scope, versionId, kept!.id))?.bytes).toEqual(photo.bytes);
    expect(await readEvidence(db, theirs.scope, versionId, kept!.id)).toBeNull();
    const { revision } = await version();
    await saveWholePage(db, ours.officer, LATER, { ...page, answers: [], photos: [], drop: kept!.id });
    expect(await listEvidence(db, ours.scope, versionId)).toEqual([]);
    expect((await db.storedFile.findFirstOrThrow({ where: ours.scope })).byteCount).toBe(0);
    expect((await version()).revision).toBe(revision + 1);
    const kinds = (await db.auditEntry.findMany({ where: { ...ours.scope, subjectId: versionId }, orderBy: { sequence: 'asc' } })).map((entry) => entry.kind);
    expect(kinds).toEqual(['assessment.begun', 'answer.saved', 'evidence.added', 'evidence.removed']);
  });

  it('begins from a document whole, or not at all', async () => {
    const { db, ours } = await begun();
    const file = { answers: [{ ...answer('room-exits', 'yes'), note: 'seen', origin: 'imported' as const }], settingsJson: '{"effortBudget":9}' };
    const made = await beginWithAnswers(db, ours.officer, AT, { ...begin, title: 'From a file', siteId: ours.siteId }, edition2.version, file);
    expect(made.ok && await readVersion(db, ours.scope, made.versionId)).toMatchObject({ title: 'From a file', settings: { effortBudget: 9 }, answers: [{ questionId: 'room-exits', value: 'yes', note: 'seen', origin: 'imported' }] });
    const theirs = await schoolForTest(db, 'Theirs');
    expect(await beginWithAnswers(db, ours.officer, AT, { ...begin, siteId: theirs.siteId }, edition2.version, file)).toMatchObject({ ok: false, field: 'siteId' });
    expect(await db.assessment.count({ where: ours.scope })).toBe(2);
  });

  it('counts packs that left service in the last twelve months, each once', async () => {
    const { db, ours } = await begun();
    const day = (days: number) => new Date(AT.getTime() - days * DAY_MS);
    expect(await readPutAside(db, ours.scope, AT)).toEqual({ registerDays: 0, isolated: 0, handedOver: 0, lastWaitDays: null });
    const pack = async (label: string) => (await db.pack.create({ data: { ...ours.scope, label, labelKey: label, series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20', state: 'in-use', stateSince: AT, createdAt: day(400) } })).id;
    const move = (packId: string, fromState: string, toState: string, at: Date) => db.packStateChange.create({ data: { ...ours.scope, packId, fromState, toState, reason: 'x', at, byId: ours.officer.personId, byName: 'K. M.' } });
    const [one, other, old] = [await pack('w-1'), await pack('w-2'), await pack('w-3')];
    await move(one, 'in-use', 'isolated', day(40));
    await move(one, 'isolated', 'isolated', day(39));
    await move(one, 'isolated', 'handed-over', day(12));
    await move(other, 'in-use', 'isolated', day(5));
    await move(old, 'in-use', 'isolated', day(390));
    expect(await readPutAside(db, ours.scope, AT)).toEqual({ registerDays: 400, isolated: 2, handedOver: 1, lastWaitDays: 28 });
  });
});
