import { isRole, type Role } from '@/lib/access/roles';
import type { Db } from '../client';

/** Somebody who works in a school now. */
export interface Member {
  readonly personId: string;
  readonly name: string;
  readonly schoolId: string;
  readonly role: Role;
}

/**
 * Returns who an account is and in which school, or null when it belongs to nobody who works in one any more. In more
 * than one school it is the one asked for, else the one joined last.
 * @param wanted id of a school; it counts only when the account works there
 */
export async function findMember(db: Db, userId: string, wanted: string | null = null): Promise<Member | null> {
  const memberships = await db.membership.findMany({
    where: { person: { userId, removedAt: null }, endedAt: null },
    orderBy: [{ joinedAt: 'desc' }, { schoolId: 'asc' }],
    select: { schoolId: true, personId: true, role: true, person: { select: { name: true } } },
  });
  const membership = memberships.find(({ schoolId }) => schoolId === wanted) ?? memberships[0];
  if (!membership) return null;
  const { schoolId, personId, role, person } = membership;
  if (!isRole(role)) throw new Error(`Membership of ${personId} has the unknown role ${role}`);
  return { schoolId, personId, role, name: person.name };
}
