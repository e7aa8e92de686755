import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { addPersons, correctFact } from '@/lib/db/incidents/correct';
import { addPhotos, findPhoto, removePhoto } from '@/lib/db/incidents/photos';
import { findIncident } from '@/lib/db/incidents/read-incidents';
import { addCorrectiveAction, close, followUp, reopen } from '@/lib/db/incidents/review';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import { databasesFor } from '@/tests/support/databases-for-tests';
import { factsForTest, INCIDENT_AT, incidentForTest, packRowForTest, signedVersionForTest } from '@/tests/support/incident-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const later = (minutes: number) => new Date(INCIDENT_AT.getTime() + minutes * 60_000);
const PHOTO: PhotoToKeep = { bytes: new Uint8Array([1, 2, 3]), mimeType: 'image/jpeg', sha256: 'a'.repeat(64), widthPx: 2, heightPx: 1 };

describe('an incident that is changed', () => {
  const newDatabase = databasesFor('sqlite');

  async function setting() {
    const { db } = await newDatabase();
    const school = await schoolForTest(db);
    return { db, ...school, organiser: await memberForTest(db, school.scope, 'organiser', 'K. M.'), helper: await memberForTest(db, school.scope, 'helper', 'H. L.') };
  }

  it('keeps what was said first beside what is said now, with the reason', async () => {
    const { db, scope, officer, organiser } = await setting();
    const id = await incidentForTest(db, organiser, { hurt: 'not-sure' });
    expect(await correctFact(db, organiser, later(1), { incidentId: id, field: 'hurt', after: 'yes', reason: 'asked the student' })).toEqual({ ok: true });
    expect(await correctFact(db, officer, later(2), { incidentId: id, field: 'hurt', after: 'no', reason: 'it was another student' })).toEqual({ ok: true });
    const incident = await findIncident(db, scope, id);
    expect([incident?.first.hurt, incident?.facts.hurt]).toEqual(['not-sure', 'no']);
    expect(incident?.corrections).toMatchObject([{ number: 1, before: 'not-sure', after: 'yes', reason: 'asked the student', byName: 'K. M.' }, { number: 2, before: 'yes', after: 'no' }]);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true });
  });

  it('isolates a pack that is named later, and lets none go that is no longer named', async () => {
    const { db, scope, organiser } = await setting();
    const [first, second] = [await packRowForTest(db, scope, 'W-11'), await packRowForTest(db, scope, 'W-12')];
    const id = await incidentForTest(db, organiser, { packs: [{ label: 'W-11', part: 'nearby' }] });
    await correctFact(db, organiser, later(1), { incidentId: id, field: 'packs', after: [{ label: 'W-12', part: 'involved' }], reason: 'misread the label' });
    const states = await db.pack.findMany({ where: { id: { in: [first, second] } }, orderBy: { label: 'asc' }, select: { state: true } });
    expect(states).toEqual([{ state: 'isolated' }, { state: 'isolated' }]);
    const incident = await findIncident(db, scope, id);
    expect(incident?.first.packs).toEqual([{ label: 'W-11', part: 'nearby' }]);
    expect(incident?.facts.packs).toEqual([{ label: 'W-12', part: 'involved' }]);
    expect(incident?.packs.map(({ label }) => label)).toEqual(['W-11', 'W-12']);
  });

  it('asks for a review when a correction makes it one that the assessment does not foresee', async () => {
    const { db, scope, siteId, officer, organiser } = await setting();
    const versionId = await signedVersionForTest(db, scope, siteId, officer.personId);
    const id = await incidentForTest(db, organiser, { kinds: ['impact'], where: { siteId, areaId: null, place: null } });
    expect((await findIncident(db, scope, id))?.reviews).toEqual([]);
    await correctFact(db, organiser, later(1), { incidentId: id, field: 'kinds', after: ['impact', 'fire'], reason: 'it burned in the evening' });
    expect((await findIncident(db, scope, id))?.reviews).toMatchObject([{ versionId }]);
  });

  it('counts people who are added, and names nobody in what cannot be removed', async () => {
    const { db, scope, organiser } = await setting();
    const id = await incidentForTest(db, organiser);
    await addPersons(db, organiser, later(1), { incidentId: id, persons: [{ role: 'student', initials: 'Q. X.', hurt: 'yes', breathed: 'no', firstAid: 'rinsed' }], reason: 'she told us on Monday' });
    expect((await findIncident(db, scope, id))?.persons).toMatchObject([{ initials: 'Q. X.' }]);
    const forGood = JSON.stringify([await db.incidentCorrection.findMany(), await db.auditEntry.findMany()]);
    expect(forGood).toContain('she told us on Monday');
    expect(forGood).not.toContain('Q. X.');
  });

  it('is closed by the officer alone, when nothing is left open, and opened again with a reason', async () => {
    const { db, scope, officer, organiser } = await setting();
    const id = await incidentForTest(db, organiser);
    expect(await close(db, officer, later(1), { incidentId: id, note: 'done' })).toMatchObject({ ok: false, faults: [{ field: null }, { field: null }, { field: null }] });
    await followUp(db, organiser, later(2), id, { kind: 'cause', text: 'charged at 2C' });
    expect((await findIncident(db, scope, id))?.state).toBe('recorded');
    await followUp(db, officer, later(3), id, { kind: 'risk', text: 'charge-runaway' });
    expect((await findIncident(db, scope, id))?.state).toBe('in-review');
    await addCorrectiveAction(db, officer, later(4), { incidentId: id, title: 'Set 1C on every charger', ownerName: 'K. M.', dueOn: '2026-12-01' });
    expect(await close(db, organiser, later(5), { incidentId: id, note: 'done' })).toMatchObject({ ok: false });
    expect(await close(db, officer, later(6), { incidentId: id, note: 'done' })).toEqual({ ok: true });
    expect(await findIncident(db, scope, id)).toMatchObject({ state: 'closed', closedNote: 'done', actions: [{ title: 'Set 1C on every charger', state: 'open' }] });
    expect(await correctFact(db, organiser, later(7), { incidentId: id, field: 'hurt', after: 'yes', reason: 'x' })).toMatchObject({ ok: false });
    expect(await reopen(db, officer, later(8), { incidentId: id, reason: 'the lab found a short' })).toEqual({ ok: true });
    expect(await findIncident(db, scope, id)).toMatchObject({ state: 'in-review', closedAt: null });
  });

  it('is changed by a helper only when the helper recorded it', async () => {
    const { db, organiser, helper } = await setting();
    const [own, others] = [await incidentForTest(db, helper), await incidentForTest(db, organiser)];
    const correct = (incidentId: string) => correctFact(db, helper, later(1), { incidentId, field: 'breathed', after: 'yes', reason: 'coughed' });
    expect(await correct(own)).toEqual({ ok: true });
    expect(await correct(others)).toMatchObject({ ok: false });
    expect(await followUp(db, helper, later(2), own, { kind: 'note', text: 'x' })).toMatchObject({ ok: false });
  });

  it('is not there for another school', async () => {
    const { db, organiser } = await setting();
    const id = await incidentForTest(db, organiser, {}, { photos: [PHOTO] });
    const other = await schoolForTest(db, 'Gull Street School');
    const stranger = other.officer;
    const none = { ok: false, faults: [{ field: null, message: 'Your school has no such incident' }] };
    expect(await correctFact(db, stranger, later(1), { incidentId: id, field: 'hurt', after: 'yes', reason: 'x' })).toEqual(none);
    expect(await close(db, stranger, later(1), { incidentId: id, note: 'x' })).toEqual(none);
    expect(await addPhotos(db, stranger, later(1), id, [PHOTO])).toEqual(none);
    const { id: photoId } = await db.incidentPhoto.findFirstOrThrow();
    expect(await findPhoto(db, other.scope, id, photoId)).toBeNull();
    expect(await removePhoto(db, stranger, later(1), { incidentId: id, photoId, reason: 'x' })).toEqual(none);
  });

  it('loses a photo’s bytes when it is taken away, and keeps that it was there', async () => {
    const { db, scope, officer, organiser } = await setting();
    const id = await incidentForTest(db, organiser, {}, { photos: [PHOTO] });
    const { id: photoId } = await db.incidentPhoto.findFirstOrThrow();
    expect(Array.from((await findPhoto(db, scope, id, photoId))!.bytes)).toEqual([1, 2, 3]);
    expect(await removePhoto(db, officer, later(1), { incidentId: id, photoId, reason: 'a face' })).toEqual({ ok: true });
    expect(await findPhoto(db, scope, id, photoId)).toBeNull();
    expect((await db.storedFile.findFirstOrThrow()).bytes).toHaveLength(0);
    expect((await findIncident(db, scope, id))?.photos).toMatchObject([{ id: photoId, removedAt: later(1) }]);
  });

  it('takes two corrections at once one after the other', async () => {
    const { db, scope, officer, organiser } = await setting();
    const id = await incidentForTest(db, organiser);
    const both = await Promise.all([
      correctFact(db, organiser, later(1), { incidentId: id, field: 'hurt', after: 'yes', reason: 'one' }),
      correctFact(db, officer, later(1), { incidentId: id, field: 'breathed', after: 'yes', reason: 'two' }),
    ]);
    expect(both).toEqual([{ ok: true }, { ok: true }]);
    expect(await findIncident(db, scope, id)).toMatchObject({ facts: factsForTest({ hurt: 'yes', breathed: 'yes' }), corrections: [{ number: 1 }, { number: 2 }] });
  });
});
