import type { BeginInput } from '@/lib/people/begin';
import { appendAudit, openAuditChain } from '../audit/append-audit';
import type { Db } from '../client';
import { lockInstallation } from '../installation';
import { runInTransaction } from '../transaction';
import { createPerson } from './accounts';
import { hasSchool } from './schools';
import { schoolColumns } from './school-record';

/**
 * Makes the first school and its safety officer, with the log's first entries: all of it or nothing. Of two at the same
 * moment one is made.
 * @returns false when there was a school already; then nothing was written
 */
export async function writeBeginning(db: Db, input: BeginInput, passwordHash: string, at: Date): Promise<boolean> {
  return runInTransaction(db, async (tx) => {
    await lockInstallation(tx);
    if (await hasSchool(tx)) return false;
    const school = await tx.school.create({ data: { ...schoolColumns(input), createdAt: at }, select: { id: true } });
    const personId = await createPerson(tx, { name: input.name, email: input.email, passwordHash, at });
    await tx.membership.create({ data: { schoolId: school.id, personId, role: 'safety-officer', post: input.post, joinedAt: at } });
    await openAuditChain(tx, school.id);
    await appendAudit(tx, { schoolId: school.id, personId, name: input.name }, at, [
      { kind: 'school.begun', subjectId: school.id, data: { name: input.schoolName } },
      { kind: 'person.joined', subjectId: personId, data: { name: input.name, role: 'safety-officer', invitationId: null } },
    ]);
    return true;
  });
}
