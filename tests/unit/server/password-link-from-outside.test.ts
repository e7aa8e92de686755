import { randomUUID } from 'node:crypto';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import type { Db } from '@/lib/db/client';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date();
const holder = globalThis as typeof globalThis & { sandbucketDatabase?: Db };

describe.each(ENGINES_HERE)('a link made at the command line on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    vi.stubEnv('BETTER_AUTH_SECRET', 'a secret of this test that is long enough');
    vi.resetModules();
    onTestFinished(() => { vi.unstubAllEnvs(); holder.sandbucketDatabase = undefined; });
    const { db } = await newDatabase();
    holder.sandbucketDatabase = db;
    const { scope, officer } = await schoolForTest(db);
    const { userId } = await db.person.findUniqueOrThrow({ where: { id: officer.personId } });
    await db.user.update({ where: { id: userId }, data: { email: 'r.o@school.example' } });
    await db.signInMethod.create({ data: { id: randomUUID(), userId, accountId: userId, providerId: 'credential', password: 'the hash', createdAt: AT, updatedAt: AT } });
    const { passwordLinkFromOutside } = await import('@/lib/server/people/password-link-from-outside');
    return { db, scope, officer, userId, passwordLinkFromOutside };
  }

  it('is one the page of new passwords opens, until the password changes, and stands in the log', async () => {
    const { db, scope, officer, userId, passwordLinkFromOutside } = await setting();
    const { openPasswordLink } = await import('@/lib/server/people/password-links');
    const made = await passwordLinkFromOutside(db, ' R.O@School.example ', new Date());
    if (!made.ok) throw new Error(made.reason);
    const token = made.path.replace('/new-password/', '');
    expect(await openPasswordLink(token)).toMatchObject({ ok: true, userId });
    expect(await db.auditEntry.findFirst({ where: { ...scope, kind: 'person.password-link-made' } })).toMatchObject({ actorId: null, subjectId: officer.personId });
    await db.signInMethod.updateMany({ where: { userId }, data: { password: 'another hash' } });
    expect(await openPasswordLink(token)).toMatchObject({ ok: false });
  });

  it('ends after an hour', async () => {
    const { db, passwordLinkFromOutside } = await setting();
    const { openPasswordLink } = await import('@/lib/server/people/password-links');
    const made = await passwordLinkFromOutside(db, 'r.o@school.example', new Date(Date.now() - 61 * 60_000));
    expect(made.ok && (await openPasswordLink(made.path.replace('/new-password/', '')))).toMatchObject({ ok: false });
  });

  it('is not made for nobody, nor for an account that was closed', async () => {
    const { db, officer, passwordLinkFromOutside } = await setting();
    expect(await passwordLinkFromOutside(db, 'who@school.example', AT)).toMatchObject({ ok: false });
    await db.membership.updateMany({ where: { personId: officer.personId }, data: { endedAt: AT } });
    expect(await passwordLinkFromOutside(db, 'r.o@school.example', AT)).toMatchObject({ ok: false });
  });
});
