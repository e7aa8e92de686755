import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import { preparedSigned } from './prepared-signed';

export interface PaperOfVersion {
  readonly id: string;
  readonly number: string;
  /** part-signed, signed */
  readonly state: string;
  readonly createdAt: Date;
  readonly replacedAt: Date | null;
  readonly signatures: readonly { readonly part: string; readonly signerName: string; readonly at: Date }[];
}

/** Everything that was decided about a version besides its answers. */
export interface StandingRecord {
  readonly preparerSigned: boolean;
  readonly basedOnId: string | null;
  readonly returnedAt: Date | null;
  readonly officerName: string | null;
  readonly suspension: { readonly reason: string; readonly byName: string; readonly at: Date } | null;
  readonly reviewRequests: readonly { readonly id: string; readonly reason: string; readonly byName: string; readonly at: Date }[];
  /** the version that took its place */
  readonly supersededBy: { readonly id: string; readonly number: number } | null;
  /** a next version that is being prepared */
  readonly next: { readonly id: string; readonly number: number } | null;
  /** papers that were made of it, the latest first */
  readonly papers: readonly PaperOfVersion[];
}

/** How a version of the school stands, or null when there is none of that id. */
export async function readStanding(db: Db, scope: SchoolScope, versionId: string, officerId: string): Promise<StandingRecord | null> {
  const row = await db.assessmentVersion.findFirst({
    where: { ...scope, id: versionId },
    select: {
      number: true, assessmentId: true, basedOnId: true, returnedAt: true,
      suspensions: { where: { liftedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { reason: true, byName: true, at: true } },
      reviewRequests: { where: { settledAt: null }, orderBy: { at: 'asc' }, select: { id: true, reason: true, byName: true, at: true } },
      documents: { where: { kind: 'assessment' }, orderBy: [{ createdAt: 'desc' }], select: { id: true, number: true, state: true, createdAt: true, replacedAt: true, signatures: { orderBy: { at: 'asc' }, select: { part: true, signerName: true, at: true } } } },
    },
  });
  if (row === null) return null;
  const [later, officer, signed] = await Promise.all([
    db.assessmentVersion.findMany({ where: { ...scope, assessmentId: row.assessmentId, number: { gt: row.number } }, orderBy: { number: 'asc' }, select: { id: true, number: true, state: true } }),
    officerId === '' ? null : db.membership.findFirst({ where: { ...scope, personId: officerId }, select: { person: { select: { name: true } } } }),
    preparedSigned(db, scope, versionId),
  ]);
  const only = (states: readonly string[]) => { const found = later.filter((one) => states.includes(one.state)).at(-1); return found === undefined ? null : { id: found.id, number: found.number }; };
  return {
    preparerSigned: signed, basedOnId: row.basedOnId, returnedAt: row.returnedAt, officerName: officer?.person.name ?? null,
    suspension: row.suspensions[0] ?? null, reviewRequests: row.reviewRequests, papers: row.documents,
    supersededBy: only(['signed', 'superseded']), next: only(['draft', 'returned', 'with-officer']),
  };
}
