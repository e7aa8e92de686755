import { describe, expect, it } from 'vitest';
import type { Role } from '@/lib/access/roles';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { writeJoining } from '@/lib/db/people/accept-invitation';
import { findMember, type Member } from '@/lib/db/people/find-member';
import { addInvitation, findInvitation, listOpenInvitations, revokeInvitation, type Invitation } from '@/lib/db/people/invitations';
import { changeMember, listMembers } from '@/lib/db/people/members';
import { schoolsOf } from '@/lib/db/people/schools-of';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { memberForTest, schoolForTest, type SchoolForTest } from '@/tests/support/school-for-tests';

const AT = new Date('2026-11-25T09:30:00.000Z');
const officerOf = ({ scope, officer }: SchoolForTest): Member => ({ ...scope, ...officer, role: 'safety-officer' });

describe.each(ENGINES_HERE)('somebody of one school with a link of another on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  async function setting() {
    const { db } = await newDatabase();
    const [one, two] = [await schoolForTest(db, 'One'), await schoolForTest(db, 'Two')];
    const ben = { ...await memberForTest(db, one.scope, 'organiser', 'Ben'), post: 'coach' };
    const { userId } = await db.person.findUniqueOrThrow({ where: { id: ben.personId } });
    const invited = async (seal: string, role: Role = 'helper'): Promise<Invitation> => {
      await addInvitation(db, officerOf(two), AT, { forWhom: 'Ben', email: null, role }, () => seal);
      const invitation = await findInvitation(db, seal);
      if (!invitation) throw new Error('The invitation is there');
      return invitation;
    };
    const join = (invitation: Invitation, person = ben, at = AT) => writeJoining(db, invitation, person, at);
    return { db, one, two, ben, userId, invited, join };
  }

  it('joins in the role of the link, keeps the first school, and stands in the log of the second', async () => {
    const { db, one, two, ben, userId, invited, join } = await setting();
    const invitation = await invited('seal');
    expect(await join(invitation)).toBe('joined');
    expect(await findMember(db, userId, two.scope.schoolId)).toMatchObject({ schoolId: two.scope.schoolId, role: 'helper', name: 'Ben' });
    expect(await findMember(db, userId, one.scope.schoolId)).toMatchObject({ schoolId: one.scope.schoolId, role: 'organiser' });
    expect((await schoolsOf(db, ben.personId)).map(({ name, post }) => [name, post])).toEqual([['One', 'teacher'], ['Two', 'coach']]);
    expect(await db.invitation.findUniqueOrThrow({ where: { id: invitation.id } })).toMatchObject({ usedAt: AT, usedById: ben.personId });
    const entries = await db.auditEntry.findMany({ where: { actorId: ben.personId } });
    expect(entries.map(({ schoolId, kind, subjectId }) => ({ schoolId, kind, subjectId }))).toEqual([{ ...two.scope, kind: 'person.joined', subjectId: ben.personId }]);
    expect(await verifyLog(db, two.scope.schoolId)).toMatchObject({ ok: true, end: { sequence: 2 } });
    expect(await db.user.count()).toBe(3);
  });

  it('uses the link once, of two at the same moment', async () => {
    const { db, one, two, ben, invited, join } = await setting();
    const eva = { ...await memberForTest(db, one.scope, 'helper', 'Eva'), post: 'coach' };
    const invitation = await invited('seal');
    expect((await Promise.all([join(invitation), join(invitation, eva)])).sort()).toEqual(['gone', 'joined']);
    expect((await listMembers(db, two.scope)).filter(({ personId }) => [ben.personId, eva.personId].includes(personId))).toHaveLength(1);
    expect(await join(invitation, eva)).not.toBe('joined');
  });

  it('does not join by a link that is too old or was taken back', async () => {
    const { db, two, invited, join } = await setting();
    const [old, back] = [await invited('old'), await invited('back')];
    expect(await join(old, undefined, old.expiresAt)).toBe('gone');
    expect(await revokeInvitation(db, officerOf(two), AT, back.id)).toBeNull();
    expect(await join(back)).toBe('gone');
    expect(await listMembers(db, two.scope)).toHaveLength(1);
    expect(await db.auditEntry.count({ where: { ...two.scope, kind: 'person.joined' } })).toBe(0);
  });

  it('changes nothing as a member, nor past a closed account: the link stays open', async () => {
    const { db, two, ben, userId, invited, join } = await setting();
    await join(await invited('first'));
    const second = await invited('second', 'safety-officer');
    expect(await join(second)).toBe('member');
    expect(await findMember(db, userId, two.scope.schoolId)).toMatchObject({ role: 'helper' });
    expect(await changeMember(db, officerOf(two), AT, { kind: 'close', personId: ben.personId })).toBeNull();
    expect(await join(second)).toBe('closed');
    expect((await findMember(db, userId, two.scope.schoolId))?.schoolId).not.toBe(two.scope.schoolId);
    expect((await listOpenInvitations(db, two.scope, AT)).map(({ id }) => id)).toEqual([second.id]);
    expect(await db.auditEntry.count({ where: { ...two.scope, kind: 'person.joined' } })).toBe(1);
  });
});
