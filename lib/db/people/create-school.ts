import type { BeginInput } from '@/lib/people/begin';
import { appendAudit, openAuditChain } from '../audit/append-audit';
import type { Tx } from '../transaction';
import { createPerson } from './accounts';
import { schoolColumns } from './school-record';

export interface NewSchool {
  readonly input: Omit<BeginInput, 'password' | 'setupCode'>;
  /** of the first officer */
  readonly passwordHash: string;
  readonly at: Date;
  readonly isDemo?: boolean;
}

/** Makes a school and its first safety officer, and begins its log with both. Called inside a transaction. */
export async function createSchool(tx: Tx, { input, passwordHash, at, isDemo = false }: NewSchool): Promise<{ readonly schoolId: string; readonly personId: string }> {
  const { id: schoolId } = await tx.school.create({ data: { ...schoolColumns(input), demo: isDemo, createdAt: at }, select: { id: true } });
  const personId = await createPerson(tx, { name: input.name, email: input.email, passwordHash, at });
  await tx.membership.create({ data: { schoolId, personId, role: 'safety-officer', post: input.post, joinedAt: at } });
  await openAuditChain(tx, schoolId);
  await appendAudit(tx, { schoolId, personId, name: input.name }, at, [
    { kind: 'school.begun', subjectId: schoolId, data: { name: input.schoolName } },
    { kind: 'person.joined', subjectId: personId, data: { name: input.name, role: 'safety-officer', invitationId: null } },
  ]);
  return { schoolId, personId };
}
