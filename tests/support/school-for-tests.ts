import { randomUUID } from 'node:crypto';
import type { Role } from '@/lib/access/roles';
import { openAuditChain } from '@/lib/db/audit/append-audit';
import type { Db } from '@/lib/db/client';
import type { Member } from '@/lib/db/people/find-member';
import { schoolScope, type SchoolScope } from '@/lib/db/scope';

const AT = new Date('2026-11-25T08:00:00.000Z');

export interface SchoolForTest {
  readonly scope: SchoolScope;
  readonly siteId: string;
  /** its safety officer */
  readonly officer: Member;
}

/** Makes a school of our own invention with an officer, a site and the beginning of a log. */
export async function schoolForTest(db: Db, name = 'Tern Lane School'): Promise<SchoolForTest> {
  const school = await db.school.create({
    data: { name, address: '1 Tern Lane', emergencyNumber: '000', meetingPlace: 'north gate', locale: 'en-GB', units: 'metric', paper: 'A4', createdAt: AT },
  });
  await openAuditChain(db, school.id);
  const scope = schoolScope({ schoolId: school.id });
  const site = await db.site.create({ data: { ...scope, name: 'Hall', kind: 'own', address: '1 Tern Lane, hall', createdAt: AT } });
  return { scope, siteId: site.id, officer: await memberForTest(db, scope, 'safety-officer', 'R. O.') };
}

/** Adds somebody with a role. */
export async function memberForTest(db: Db, scope: SchoolScope, role: Role, name: string): Promise<Member> {
  const userId = randomUUID();
  await db.user.create({ data: { id: userId, name, email: `${userId}@school.example`, createdAt: AT, updatedAt: AT } });
  const person = await db.person.create({ data: { userId, name, createdAt: AT } });
  await db.membership.create({ data: { ...scope, personId: person.id, role, post: 'teacher', joinedAt: AT } });
  return { ...scope, personId: person.id, role, name };
}
