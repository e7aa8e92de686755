import type { Standing } from '@/lib/assessments/standing';
import { AssessmentStateSchema, type AssessmentState } from '@/lib/assessments/standing';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { preparedSigned } from './prepared-signed';

/** How a version stands inside of a transaction, or null when the school has none of that id. */
export async function standingOf(tx: Tx, scope: SchoolScope, versionId: string): Promise<(Standing & { readonly revision: number; readonly assessmentId: string }) | null> {
  const row = await tx.assessmentVersion.findFirst({
    where: { ...scope, id: versionId },
    select: { state: true, preparedById: true, revision: true, assessmentId: true, suspensions: { where: { liftedAt: null }, select: { id: true } } },
  });
  if (row === null) return null;
  return {
    state: AssessmentStateSchema.parse(row.state),
    preparerId: row.preparedById,
    preparerSigned: await preparedSigned(tx, scope, versionId),
    suspended: row.suspensions.length > 0,
    revision: row.revision,
    assessmentId: row.assessmentId,
  };
}

/** Moves a version on, if it still stands as it was read. @returns whether it did */
export async function moveVersion(tx: Tx, scope: SchoolScope, versionId: string, from: { readonly revision: number }, data: { readonly state: AssessmentState } & Readonly<Record<string, unknown>>): Promise<boolean> {
  const { count } = await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId, revision: from.revision }, data: { ...data, revision: from.revision + 1 } });
  return count === 1;
}
