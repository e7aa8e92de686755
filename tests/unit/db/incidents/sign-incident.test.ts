import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { documentOfFile, documentOfNumber } from '@/lib/db/documents/document-status';
import { dataOf, fileOf, keptPaperOf, papersOf } from '@/lib/db/documents/read-document';
import { sha256Of } from '@/lib/db/documents/write-document';
import { findIncident } from '@/lib/db/incidents/read-incidents';
import { close, followUp, reopen } from '@/lib/db/incidents/review';
import { keepSignedIncident, type SignedIncident } from '@/lib/db/incidents/sign-incident';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { INCIDENT_AT, incidentForTest } from '@/tests/support/incident-for-tests';
import { bytes, hash, keysForTest } from '@/tests/support/keys-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const later = (minutes: number) => new Date(INCIDENT_AT.getTime() + minutes * 60_000);

describe.each(ENGINES_HERE)('the paper of an incident on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function closed() {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    const [officer, stranger, helper] = [ours.officer, theirs.officer, await memberForTest(db, ours.scope, 'helper', 'H. L.')];
    await keysForTest(db, officer, INCIDENT_AT, [{ id: 'of-officer', digit: 'c', of: officer }]);
    const id = await incidentForTest(db, helper);
    for (const added of [{ kind: 'cause', text: 'dented' }, { kind: 'measure', text: 'looked at all' }, { kind: 'risk', text: 'none' }] as const) await followUp(db, officer, later(1), id, added);
    expect(await close(db, officer, later(2), { incidentId: id, note: 'look earlier' })).toEqual({ ok: true });
    const signed = async (number: string, over: Partial<SignedIncident> = {}): Promise<SignedIncident> => ({
      incidentId: id, revision: (await findIncident(db, ours.scope, id))?.revision ?? 0,
      document: { id: `document-${number}`, number, title: 'Incident 1', format: 'A4', language: 'en-GB', fingerprint: '9c41', bytes: [bytes(`made ${number}`), bytes(`signed ${number}`)], data: bytes('data') },
      signature: { part: 'officer', signerId: officer.personId, signerName: 'R. O.', signerPost: 'officer', certificateId: 'of-officer', certificateFingerprint: hash('c') }, ...over,
    });
    return { db, id, ours, theirs, officer, helper, stranger, signed };
  }

  it('is kept with its signature, both revisions, its data and the log, and is known by its bytes and its number', async () => {
    const { db, id, ours, theirs, officer, signed } = await closed();
    expect(await keepSignedIncident(db, officer, later(3), await signed('SB-1'))).toEqual({ ok: true });
    const of = { kind: 'incident', incidentId: id } as const;
    expect(await fileOf(db, ours.scope, of)).toMatchObject({ number: 'SB-1', bytes: bytes('signed SB-1') });
    expect(await dataOf(db, ours.scope, of)).toEqual(bytes('data'));
    expect(await papersOf(db, ours.scope, { incidentId: id })).toMatchObject([{ number: 'SB-1', state: 'signed', replacedAt: null, signatures: [{ part: 'officer', signerName: 'R. O.' }] }]);
    expect([await keptPaperOf(db, ours.scope, of, '9c41'), await keptPaperOf(db, ours.scope, of, 'other')]).toEqual(['SB-1', null]);
    expect(await documentOfFile(db, sha256Of(bytes('signed SB-1')))).toMatchObject({ number: 'SB-1', kind: 'incident', reviewAskedAt: null });
    expect([await fileOf(db, theirs.scope, of), await dataOf(db, theirs.scope, of), await papersOf(db, theirs.scope, { incidentId: id })]).toEqual([null, null, []]);
    const kinds = (await db.auditEntry.findMany({ where: ours.scope, orderBy: { sequence: 'desc' }, take: 2 })).map(({ kind }) => kind);
    expect(kinds).toEqual(['document.signed', 'document.made']);
    expect((await verifyLog(db, ours.scope.schoolId)).ok).toBe(true);
  });

  it('is not signed by a helper, by the other school, while it is open, or as it no longer is', async () => {
    const { db, id, officer, helper, stranger, signed } = await closed();
    const paper = await signed('SB-1');
    expect(await keepSignedIncident(db, helper, later(3), paper)).toMatchObject({ ok: false });
    expect(await keepSignedIncident(db, stranger, later(3), paper)).toMatchObject({ ok: false, faults: [{ message: 'Your school has no such incident' }] });
    expect(await keepSignedIncident(db, officer, later(3), { ...paper, revision: paper.revision - 1 })).toMatchObject({ ok: false });
    await reopen(db, officer, later(4), { incidentId: id, reason: 'a second pack' });
    expect(await keepSignedIncident(db, officer, later(5), await signed('SB-1'))).toMatchObject({ ok: false });
    expect([await db.document.count(), await db.signature.count()]).toEqual([0, 0]);
  });

  it('is under review once the incident is open again, and is replaced by the next', async () => {
    const { db, id, officer, signed } = await closed();
    await keepSignedIncident(db, officer, later(3), await signed('SB-1'));
    await reopen(db, officer, later(4), { incidentId: id, reason: 'a second pack' });
    expect(await documentOfNumber(db, 'SB-1')).toMatchObject({ reviewAskedAt: later(4), replacedAt: null });
    await close(db, officer, later(5), { incidentId: id, note: 'both looked at' });
    expect(await keepSignedIncident(db, officer, later(6), await signed('SB-2'))).toEqual({ ok: true });
    expect(await documentOfNumber(db, 'SB-1')).toMatchObject({ replacedAt: later(6) });
    expect(await documentOfNumber(db, 'SB-2')).toMatchObject({ replacedAt: null, reviewAskedAt: null });
  });
});
