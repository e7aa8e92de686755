import { isRole, type Role } from '@/lib/access/roles';
import type { AuditEvent } from '@/lib/audit/event';
import { decideMember, type MemberChange, type MemberState } from '@/lib/people/decide-member';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { endSessions } from './accounts';
import type { Member } from './find-member';

export interface SchoolMember extends MemberState {
  readonly name: string;
  readonly post: string;
  readonly email: string;
  readonly userId: string;
  readonly endedAt: Date | null;
}

/** Returns everybody of a school: those with an open account first, then by name. */
export async function listMembers(db: Pick<Tx, 'membership'>, scope: SchoolScope): Promise<readonly SchoolMember[]> {
  const rows = await db.membership.findMany({
    where: { ...scope, person: { removedAt: null } },
    select: { personId: true, role: true, post: true, endedAt: true, person: { select: { name: true, userId: true, user: { select: { email: true } } } } },
  });
  const members = rows.map(({ person, role, ...row }) => ({ ...row, role: knownRole(role), isActive: row.endedAt === null, name: person.name, userId: person.userId, email: person.user.email }));
  return members.sort((a, b) => Number(b.isActive) - Number(a.isActive) || a.name.localeCompare(b.name) || a.personId.localeCompare(b.personId));
}

/** Makes a change to a member when it may be made; returns why not, in words, or null. */
export async function changeMember(db: Db, by: Member, at: Date, change: MemberChange): Promise<string | null> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx) => {
    await lockMembers(tx, scope);
    const members = await listMembers(tx, scope);
    const decision = decideMember(members, change);
    if (!decision.ok) return { value: decision.reason, events: [] };
    const where = { schoolId_personId: { ...scope, personId: change.personId } };
    await tx.membership.update({ where, data: { ...columnsOf(change, at), revision: { increment: 1 } } });
    const userId = members.find(({ personId }) => personId === change.personId)?.userId;
    if (change.kind === 'close' && userId !== undefined) await endSessions(tx, userId, null);
    return { value: null, events: [eventOf(change, decision.before)] };
  });
}

/** Two officers may each take the other's role at the same moment. PostgreSQL lets the second wait here and read anew. */
async function lockMembers(tx: Tx, { schoolId }: SchoolScope): Promise<void> {
  await tx.school.update({ where: { id: schoolId }, data: { revision: { increment: 0 } } });
}

function columnsOf(change: MemberChange, at: Date) {
  if (change.kind === 'role') return { role: change.role };
  return { endedAt: change.kind === 'close' ? at : null };
}

function eventOf(change: MemberChange, before: MemberState): AuditEvent {
  const subjectId = change.personId;
  if (change.kind === 'role') return { kind: 'person.role-changed', subjectId, data: { from: before.role, to: change.role } };
  return change.kind === 'close' ? { kind: 'person.left', subjectId, data: { reason: null } } : { kind: 'person.back', subjectId, data: {} };
}

function knownRole(role: string): Role {
  if (!isRole(role)) throw new Error(`Unknown role ${role} in the database`);
  return role;
}
