import { describe, expect, it } from 'vitest';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { Db } from '@/lib/db/client';
import { recordStart } from '@/lib/db/installation';
import { writeBeginning } from '@/lib/db/people/begin-school';
import { findMember } from '@/lib/db/people/find-member';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { beginning } from '@/tests/support/people-for-tests';

const AT = new Date('2026-11-25T09:30:00.123Z');
const countRows = async (db: Db) => [await db.school.count(), await db.person.count(), await db.user.count(), await db.membership.count(), await db.signInMethod.count(), await db.auditEntry.count()];

describe.each(ENGINES_HERE)('the first run on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  const started = async () => {
    const { db } = await newDatabase();
    await recordStart(db, { version: '0.1.0', at: AT });
    return db;
  };

  it('makes a school, an officer who can sign in, and a log that holds both', async () => {
    const db = await started();
    expect(await writeBeginning(db, beginning('Tern Lane School', AT))).toBe(true);
    const user = await db.user.findFirstOrThrow();
    const member = await findMember(db, user.id);
    expect(member).toMatchObject({ name: 'Rowan Oake', role: 'safety-officer' });
    expect(user.email).toBe('r.oake@ternlane.example');
    const entries = await db.auditEntry.findMany({ orderBy: { sequence: 'asc' } });
    expect(entries.map(({ kind, actorId }) => [kind, actorId])).toEqual([['school.begun', member?.personId], ['person.joined', member?.personId]]);
    expect(await verifyLog(db, String(member?.schoolId))).toMatchObject({ ok: true });
  });

  it('is closed afterwards, and of several at the same moment only one is made', async () => {
    const db = await started();
    const made = await Promise.all(['One', 'Two', 'Three', 'Four'].map((name) => writeBeginning(db, beginning(name, AT, `${name}@school.example`))));
    expect(made.filter(Boolean)).toHaveLength(1);
    expect(await countRows(db)).toEqual([1, 1, 1, 1, 1, 2]);
    expect(await writeBeginning(db, beginning('Five', AT))).toBe(false);
  });

  it('leaves nothing when its last step fails', async () => {
    const db = await started();
    await db.$executeRawUnsafe('ALTER TABLE "AuditEntry" RENAME TO "Elsewhere"');
    await expect(writeBeginning(db, beginning('Tern Lane School', AT))).rejects.toThrow();
    await db.$executeRawUnsafe('ALTER TABLE "Elsewhere" RENAME TO "AuditEntry"');
    expect(await countRows(db)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(await writeBeginning(db, beginning('Tern Lane School', AT))).toBe(true);
  });
});
