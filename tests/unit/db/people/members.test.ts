import { describe, expect, it } from 'vitest';
import { isRole } from '@/lib/access/roles';
import { verifyLog } from '@/lib/db/audit/verify-log';
import type { Db } from '@/lib/db/client';
import { writeAcceptance } from '@/lib/db/people/accept-invitation';
import { writePassword } from '@/lib/db/people/change-password';
import { schoolsOf } from '@/lib/db/people/schools-of';
import { findMember, type Member } from '@/lib/db/people/find-member';
import { addInvitation, findInvitation, listOpenInvitations, revokeInvitation } from '@/lib/db/people/invitations';
import { changeMember, listMembers } from '@/lib/db/people/members';
import type { SchoolScope } from '@/lib/db/scope';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T09:30:00.000Z');
const ACCEPT = { token: '', name: 'Kim Marsh', post: 'Teacher', email: 'k.marsh@ternlane.example', password: '' };

async function rolesOf(db: Db, scope: SchoolScope): Promise<readonly string[]> {
  return (await listMembers(db, scope)).filter(({ isActive }) => isActive).map(({ role }) => role).sort();
}

async function signedIn(db: Db, personId: string): Promise<string> {
  const { userId } = await db.person.findUniqueOrThrow({ where: { id: personId } });
  for (const id of ['a', 'b']) await db.signInSession.create({ data: { id: `${userId}-${id}`, token: `${userId}-${id}`, userId, expiresAt: AT, createdAt: AT, updatedAt: AT } });
  return userId;
}

describe.each(ENGINES_HERE)('people of a school on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  it('two officers who take each other’s role at the same moment leave one', async () => {
    const { db } = await newDatabase();
    const { scope, officer } = await schoolForTest(db);
    const ann: Member = { ...scope, ...officer, role: 'safety-officer' };
    const ben = await memberForTest(db, scope, 'safety-officer', 'Ben');
    const answers = await Promise.all([
      changeMember(db, ann, AT, { kind: 'role', personId: ben.personId, role: 'helper' }),
      changeMember(db, ben, AT, { kind: 'role', personId: ann.personId, role: 'helper' }),
    ]);
    expect(answers.filter((answer) => answer === null)).toHaveLength(1);
    expect(await rolesOf(db, scope)).toEqual(['helper', 'safety-officer']);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true, end: { sequence: 1 } });
  });

  it('a closed account is signed out and is nobody, and stays in the list', async () => {
    const { db } = await newDatabase();
    const { scope, officer } = await schoolForTest(db);
    const ann: Member = { ...scope, ...officer, role: 'safety-officer' };
    const ben = await memberForTest(db, scope, 'organiser', 'Ben');
    const userId = await signedIn(db, ben.personId);
    expect(await changeMember(db, ann, AT, { kind: 'close', personId: ben.personId })).toBeNull();
    expect(await db.signInSession.count({ where: { userId } })).toBe(0);
    expect(await findMember(db, userId)).toBeNull();
    expect((await listMembers(db, scope)).map(({ name, isActive }) => [name, isActive])).toEqual([['R. O.', true], ['Ben', false]]);
    expect(await changeMember(db, ann, AT, { kind: 'reopen', personId: ben.personId })).toBeNull();
    expect(await findMember(db, userId)).toEqual(ben);
  });

  it('somebody of two schools is asked for in one of them, and never in a third', async () => {
    const { db } = await newDatabase();
    const [one, two, third] = [await schoolForTest(db, 'One'), await schoolForTest(db, 'Two'), await schoolForTest(db, 'Third')];
    const ben = await memberForTest(db, one.scope, 'organiser', 'Ben');
    await db.membership.create({ data: { ...two.scope, personId: ben.personId, role: 'helper', post: 'coach', joinedAt: AT } });
    const { userId } = await db.person.findUniqueOrThrow({ where: { id: ben.personId } });
    const roleIn = async ({ scope }: typeof one) => (await findMember(db, userId, scope.schoolId))?.schoolId;
    expect([await roleIn(one), await roleIn(two)]).toEqual([one.scope.schoolId, two.scope.schoolId]);
    expect([one.scope.schoolId, two.scope.schoolId]).toContain(await roleIn(third));
    expect((await schoolsOf(db, ben.personId)).map(({ name }) => name)).toEqual(['One', 'Two']);
  });

  it('people of another school are not there', async () => {
    const { db } = await newDatabase();
    const [one, two] = [await schoolForTest(db, 'One'), await schoolForTest(db, 'Two')];
    const theirs = await memberForTest(db, two.scope, 'organiser', 'Zoe');
    const ann: Member = { ...one.scope, ...one.officer, role: 'safety-officer' };
    expect(await changeMember(db, ann, AT, { kind: 'close', personId: theirs.personId })).toContain('does not belong');
    await addInvitation(db, { ...two.scope, ...two.officer, role: 'safety-officer' }, AT, { forWhom: 'Yan', email: null, role: 'helper' }, (id) => `seal ${id}`);
    const [invitation] = await listOpenInvitations(db, two.scope, AT);
    expect(await listOpenInvitations(db, one.scope, AT)).toEqual([]);
    expect(await revokeInvitation(db, ann, AT, String(invitation?.id))).toContain('not one of ours');
    expect(await listOpenInvitations(db, two.scope, AT)).toHaveLength(1);
  });

  it('a link is used once, by one of two at the same moment, and then no more', async () => {
    const { db } = await newDatabase();
    const { scope, officer } = await schoolForTest(db);
    const ann: Member = { ...scope, ...officer, role: 'safety-officer' };
    await addInvitation(db, ann, AT, { forWhom: 'Kim', email: null, role: 'organiser' }, () => 'seal');
    const invitation = await findInvitation(db, 'seal');
    if (!invitation) throw new Error('The invitation is there');
    const answers = await Promise.all(['k.marsh@ternlane.example', 'l.fenn@ternlane.example'].map((email) => writeAcceptance(db, invitation, { ...ACCEPT, email }, 'hash', AT)));
    expect([...answers].sort()).toEqual(['gone', 'joined']);
    expect(await rolesOf(db, scope)).toEqual(['organiser', 'safety-officer']);
    expect(await db.user.count()).toBe(2);
    expect(await verifyLog(db, scope.schoolId)).toMatchObject({ ok: true, end: { sequence: 2 } });
    expect(isRole((await db.membership.findFirstOrThrow({ where: { role: 'organiser' } })).role)).toBe(true);
  });

  it('an address somebody signs in with makes no second account, and the link stays open', async () => {
    const { db } = await newDatabase();
    const { scope, officer } = await schoolForTest(db);
    await addInvitation(db, { ...scope, ...officer, role: 'safety-officer' }, AT, { forWhom: 'Kim', email: null, role: 'organiser' }, () => 'seal');
    const invitation = await findInvitation(db, 'seal');
    if (!invitation) throw new Error('The invitation is there');
    const { email } = await db.user.findFirstOrThrow();
    expect(await writeAcceptance(db, invitation, { ...ACCEPT, email }, 'hash', AT)).toBe('email-taken');
    expect(await listOpenInvitations(db, scope, AT)).toHaveLength(1);
    expect(await writeAcceptance(db, invitation, ACCEPT, 'hash', invitation.expiresAt)).toBe('gone');
    expect(await db.user.count()).toBe(1);
  });

  it('a password is replaced only by who gave the present one, and the other sessions end', async () => {
    const { db } = await newDatabase();
    const { scope } = await schoolForTest(db);
    const ben = await memberForTest(db, scope, 'organiser', 'Ben');
    const userId = await signedIn(db, ben.personId);
    await db.signInMethod.create({ data: { id: 'm', accountId: userId, providerId: 'credential', userId, password: 'old', createdAt: AT, updatedAt: AT } });
    expect(await writePassword(db, ben, AT, { userId, before: 'other', after: 'new', keep: null })).toBe(false);
    expect(await db.signInSession.count()).toBe(2);
    expect(await writePassword(db, ben, AT, { userId, before: 'old', after: 'new', keep: `${userId}-a` })).toBe(true);
    expect((await db.signInSession.findMany()).map(({ id }) => id)).toEqual([`${userId}-a`]);
    expect((await db.auditEntry.findMany()).map(({ kind }) => kind)).toEqual(['person.password-changed']);
  });
});
