import { AssessmentStateSchema, type AssessmentState } from '@/lib/assessments/standing';
import type { Db } from '../client';
import type { SchoolScope } from '../scope';

export interface ListedVersion {
  readonly id: string;
  readonly assessmentId: string;
  readonly title: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly number: number;
  readonly state: AssessmentState;
  readonly season: string;
  readonly preparedById: string;
  readonly preparedByName: string;
  readonly submittedAt: Date | null;
  readonly signedAt: Date | null;
  readonly reviewBy: string | null;
  readonly suspended: boolean;
  readonly reviewAsked: boolean;
  readonly answers: number;
}

/** All versions of all assessments of a school, the newest first. */
export async function listVersions(db: Db, scope: SchoolScope): Promise<readonly ListedVersion[]> {
  const rows = await db.assessmentVersion.findMany({
    where: scope,
    orderBy: [{ createdAt: 'desc' }, { number: 'desc' }],
    include: {
      assessment: { include: { site: { select: { name: true } } } },
      suspensions: { where: { liftedAt: null }, select: { id: true } },
      reviewRequests: { where: { settledAt: null }, select: { id: true } },
      _count: { select: { answers: true } },
    },
  });
  return rows.map((row) => ({
    id: row.id, assessmentId: row.assessmentId, title: row.assessment.title, siteId: row.assessment.siteId, siteName: row.assessment.site.name,
    number: row.number, state: AssessmentStateSchema.parse(row.state), season: row.season ?? '', preparedById: row.preparedById, preparedByName: row.preparedByName,
    submittedAt: row.submittedAt, signedAt: row.signedAt, reviewBy: row.reviewBy, suspended: row.suspensions.length > 0, reviewAsked: row.reviewRequests.length > 0, answers: row._count.answers,
  }));
}
