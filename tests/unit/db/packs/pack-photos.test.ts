import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { lastChargeOf } from '@/lib/db/packs/last-charge';
import { bytesOfPackPhoto, keepPackPhoto, photoOfPack, removePackPhoto } from '@/lib/db/packs/pack-photos';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { packRowForTest } from '@/tests/support/incident-for-tests';
import { later, MONDAY } from '@/tests/support/pack-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const photo = (mark: number): PhotoToKeep => ({ bytes: new Uint8Array([mark, 2, 3]), mimeType: 'image/jpeg', sha256: 'a'.repeat(64), widthPx: 2, heightPx: 1 });

describe.each(ENGINES_HERE)('beside a pack on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  const setting = async () => {
    const { db } = await newDatabase();
    const [ours, theirs] = [await schoolForTest(db, 'Ours'), await schoolForTest(db, 'Theirs')];
    return { db, ours, theirs, packId: await packRowForTest(db, ours.scope, 'W-11') };
  };

  it('stands its latest photo; the one before is gone with its bytes, and the log says both', async () => {
    const { db, ours, packId } = await setting();
    expect(await keepPackPhoto(db, ours.officer, MONDAY, packId, photo(1))).toBe(true);
    const first = await photoOfPack(db, ours.scope, packId);
    expect(await keepPackPhoto(db, ours.officer, later(1), packId, photo(9))).toBe(true);
    const now = await photoOfPack(db, ours.scope, packId);
    expect([...((await bytesOfPackPhoto(db, ours.scope, packId, now?.id ?? ''))?.bytes ?? [])]).toEqual([9, 2, 3]);
    expect(await bytesOfPackPhoto(db, ours.scope, packId, first?.id ?? '')).toBeNull();
    expect(await removePackPhoto(db, ours.officer, later(2), packId)).toBe(true);
    expect(await removePackPhoto(db, ours.officer, later(3), packId)).toBe(false);
    expect(await db.storedFile.count({ where: { byteCount: { gt: 0 } } })).toBe(0);
    expect((await db.auditEntry.findMany({ where: ours.scope, orderBy: { sequence: 'asc' } })).map(({ kind }) => kind)).toEqual(['pack.photo-added', 'pack.photo-removed', 'pack.photo-added', 'pack.photo-removed']);
    expect(await verifyLog(db, ours.scope.schoolId)).toMatchObject({ ok: true });
  });

  it('is nothing for another school', async () => {
    const { db, ours, theirs, packId } = await setting();
    await keepPackPhoto(db, ours.officer, MONDAY, packId, photo(1));
    const kept = await photoOfPack(db, ours.scope, packId);
    expect(await keepPackPhoto(db, theirs.officer, later(1), packId, photo(2))).toBe(false);
    expect(await removePackPhoto(db, theirs.officer, later(1), packId)).toBe(false);
    expect(await bytesOfPackPhoto(db, theirs.scope, packId, kept?.id ?? '')).toBeNull();
    expect(await photoOfPack(db, theirs.scope, packId)).toBeNull();
  });

  it('stands its last charge, and who kept that log', async () => {
    const { db, ours, packId } = await setting();
    const { scope, siteId, officer } = ours;
    for (const [hours, charges] of [[0, 1], [48, 2], [96, 0]] as const) {
      const { id } = await db.session.create({ data: { ...scope, siteId, startedAt: later(hours), byId: officer.personId, byName: officer.name } });
      await db.sessionPack.create({ data: { ...scope, sessionId: id, packId, charges, crashes: 1 } });
    }
    expect(await lastChargeOf(db, scope, packId)).toMatchObject({ at: later(48), byName: 'R. O.', place: 'Hall' });
    expect(await lastChargeOf(db, ours.scope, await packRowForTest(db, scope, 'W-12'))).toBeNull();
  });
});
