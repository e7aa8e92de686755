import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import { type HandOver, handOver } from '@/lib/db/assessments/hand-over';
import { acceptStopOf, liftSuspensionOf, returnVersion, type SignOff, signOff, suspendVersion } from '@/lib/db/assessments/officer-acts';
import { readVersion } from '@/lib/db/assessments/read-version';
import { saveAnswers } from '@/lib/db/assessments/save-answer';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { draftForTest } from '@/tests/support/draft-for-tests';
import { bytes, hash, keysForTest } from '@/tests/support/keys-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T08:00:00.000Z');
const TODAY = '2026-11-25';

describe.each(ENGINES_HERE)('signing on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function prepared() {
    const { db } = await newDatabase();
    const { ours, teacher, versionId } = await draftForTest(db, AT);
    await keysForTest(db, ours.officer, AT, [{ id: 'of-teacher', digit: 'b', of: teacher }, { id: 'of-officer', digit: 'c', of: ours.officer }]);
    const revision = async (): Promise<number> => (await readVersion(db, ours.scope, versionId))?.revision ?? 0;
    const handing = async (documentId: string, over: Partial<HandOver> = {}): Promise<HandOver> => ({
      versionId, revision: await revision(), officerId: ours.officer.personId, reviewBy: '2027-07-31', settings: {}, openStops: [], certificateFingerprint: hash('b'),
      score: { inputJson: '{}', inputHash: hash('1'), contentVersion: edition2.version, engineVersion: '1', seed: 4_294_967_295, draws: 4000, resultJson: '{}', resultHash: hash('2') },
      document: { id: documentId, number: `SB-${documentId}`, kind: 'assessment', title: 'Paper', format: 'A4', language: 'en-GB', fingerprint: '9c41', of: {}, bytes: [bytes('paper'), bytes('paper signed once')] },
      signature: { part: 'preparer', signerId: teacher.personId, signerName: 'K. M.', signerPost: 'teacher', certificateId: 'of-teacher' },
      ...over,
    });
    const signing = async (documentId: string, over: Partial<SignOff> = {}): Promise<SignOff> => ({
      versionId, revision: await revision(), documentId, documentNumber: `SB-${documentId}`, documentRevision: 1, bytes: bytes('paper signed twice'),
      signature: { part: 'officer', signerId: ours.officer.personId, signerName: 'R. O.', signerPost: 'officer', certificateId: 'of-officer' }, certificateFingerprint: hash('c'), openStops: [], extreme: [], ...over,
    });
    return { db, ours, teacher, versionId, handing, signing };
  }

  it('hands over, signs off, and keeps every revision of the paper and the chain of the log', async () => {
    const { db, ours, teacher, versionId, handing, signing } = await prepared();
    expect(await handOver(db, teacher, AT, await handing('one'))).toEqual({ ok: true });
    expect(await waitingPaperOf(db, ours.scope, { kind: 'assessment', versionId })).toMatchObject({ id: 'one', revisions: [{ number: 2 }] });
    expect(await signOff(db, ours.officer, AT, await signing('one'))).toEqual({ ok: true });
    expect(await readVersion(db, ours.scope, versionId)).toMatchObject({ state: 'signed', reviewBy: '2027-07-31', scope: { officerId: ours.officer.personId } });
    const revisions = await db.documentRevision.findMany({ where: { documentId: 'one' }, orderBy: { number: 'asc' } });
    expect(revisions.map((one) => new TextDecoder().decode(one.bytes))).toEqual(['paper', 'paper signed once', 'paper signed twice']);
    expect(await db.score.count()).toBe(1);
    expect((await verifyLog(db, ours.scope.schoolId)).ok).toBe(true);
  });

  it('lets nobody sign as officer what they prepared, and nobody hand over what somebody else prepares', async () => {
    const { db, ours, teacher, handing, signing } = await prepared();
    expect(await handOver(db, ours.officer, AT, await handing('one'))).toMatchObject({ ok: false });
    await handOver(db, teacher, AT, await handing('one'));
    expect(await signOff(db, teacher, AT, await signing('one'))).toMatchObject({ ok: false, why: expect.stringContaining('You prepared it') as string });
    expect(await db.signature.count()).toBe(1);
  });

  it('does not sign while a stop condition holds, nor a paper that is no longer the one', async () => {
    const { db, ours, teacher, versionId, handing, signing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    expect(await signOff(db, ours.officer, AT, await signing('one', { openStops: ['No way out'] }))).toMatchObject({ ok: false });
    const until = edition2.stops.find((stop) => stop.acceptable?.kind === 'until');
    if (until === undefined) throw new Error('no stop that may be accepted');
    expect(await acceptStopOf(db, ours.officer, AT, versionId, until, { reason: 'being mended', replacement: 'nobody within 5 m', endsOn: '2026-12-01', paper: '' }, TODAY)).toEqual({ ok: true });
    expect(await waitingPaperOf(db, ours.scope, { kind: 'assessment', versionId })).toBeNull();
    expect(await signOff(db, ours.officer, AT, await signing('one'))).toMatchObject({ ok: false, why: expect.stringContaining('preparer signs it again') as string });
    expect(await handOver(db, teacher, AT, await handing('two'))).toEqual({ ok: true });
    expect(await signOff(db, ours.officer, AT, await signing('two'))).toEqual({ ok: true });
  });

  it('never accepts what the content lets nobody accept', async () => {
    const { db, ours, teacher, versionId, handing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    const never = edition2.stops.find((stop) => stop.acceptable?.kind === 'never');
    if (never === undefined) throw new Error('no such stop');
    expect(await acceptStopOf(db, ours.officer, AT, versionId, never, { reason: 'x', replacement: 'y', endsOn: '2026-12-01', paper: 'z' }, TODAY)).toMatchObject({ ok: false });
    expect(await db.stopAcceptance.count()).toBe(0);
  });

  it('returns with a comment, voids the paper, and answers may be changed again', async () => {
    const { db, ours, teacher, versionId, handing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    const answer = { questionId: 'room-exits', value: 'two', notSureTicks: [], note: '', seen: 0, origin: 'typed' as const };
    expect(await saveAnswers(db, teacher, AT, versionId, [answer])).toMatchObject({ ok: false });
    expect(await returnVersion(db, ours.officer, AT, versionId, 'Which door?')).toEqual({ ok: true });
    expect(await waitingPaperOf(db, ours.scope, { kind: 'assessment', versionId })).toBeNull();
    expect(await saveAnswers(db, teacher, AT, versionId, [answer])).toMatchObject({ ok: true });
    expect(await db.comment.count({ where: { versionId } })).toBe(1);
  });

  it('does not hand over a paper that was made of answers changed since', async () => {
    const { db, teacher, versionId, handing } = await prepared();
    const early = await handing('one');
    await saveAnswers(db, teacher, AT, versionId, [{ questionId: 'room-exits', value: 'two', notSureTicks: [], note: '', seen: 0, origin: 'typed' }]);
    expect(await handOver(db, teacher, AT, early)).toMatchObject({ ok: false, why: expect.stringContaining('Somebody changed') as string });
    expect(await db.document.count()).toBe(0);
  });

  it('of two officers at once only one signature is kept', async () => {
    const { db, ours, teacher, handing, signing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    const both = await Promise.all([signOff(db, ours.officer, AT, await signing('one')), signOff(db, ours.officer, AT, await signing('one'))]);
    expect(both.filter((one) => one.ok)).toHaveLength(1);
    expect(await db.signature.count({ where: { part: 'officer' } })).toBe(1);
  });

  it('puts the version before out of force when the next is signed, and suspends at once', async () => {
    const { db, ours, teacher, versionId, handing, signing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    await signOff(db, ours.officer, AT, await signing('one'));
    const next = await beginAssessment(db, teacher, AT, { siteId: ours.siteId, title: 'Room 9', season: null, copyFromId: versionId }, edition2.version);
    if (!next.ok) throw new Error(next.why);
    const revision = async (): Promise<number> => (await readVersion(db, ours.scope, next.versionId))?.revision ?? 0;
    await handOver(db, teacher, AT, { ...(await handing('two')), versionId: next.versionId, revision: await revision() });
    expect(await signOff(db, ours.officer, AT, { ...(await signing('two')), versionId: next.versionId, revision: await revision() })).toEqual({ ok: true });
    expect(await readVersion(db, ours.scope, versionId)).toMatchObject({ state: 'superseded' });
    expect(await suspendVersion(db, ours.officer, AT, versionId, 'fire')).toMatchObject({ ok: false });
    expect(await suspendVersion(db, ours.officer, AT, next.versionId, 'Smoke on Friday')).toEqual({ ok: true });
    expect(await suspendVersion(db, ours.officer, AT, next.versionId, 'again')).toMatchObject({ ok: false });
    expect(await liftSuspensionOf(db, ours.officer, AT, next.versionId, 'Pack was the cause')).toEqual({ ok: true });
    expect(await db.suspension.count()).toBe(1);
  });

  it('is not to be had from another school', async () => {
    const { db, versionId, teacher, handing, signing } = await prepared();
    await handOver(db, teacher, AT, await handing('one'));
    const theirs = await schoolForTest(db, 'Theirs');
    expect(await returnVersion(db, theirs.officer, AT, versionId, 'x')).toMatchObject({ ok: false });
    expect(await signOff(db, theirs.officer, AT, await signing('one'))).toMatchObject({ ok: false });
    expect(await waitingPaperOf(db, theirs.scope, { kind: 'assessment', versionId })).toBeNull();
  });
});
