import type { Db } from '../client';
import type { SchoolScope } from '../scope';

/** Everything besides the answers that stands on the paper of a version, as the database holds it. */
export async function paperMaterial(db: Db, scope: SchoolScope, versionId: string) {
  const earlier = await versionsUpTo(db, scope, versionId);
  const [acceptances, actions, comments, evidence, packs, incidents, site] = await Promise.all([
    db.stopAcceptance.findMany({ where: { ...scope, versionId, withdrawnAt: null }, orderBy: { at: 'asc' } }),
    db.action.findMany({ where: { ...scope, OR: [{ versionId, state: { in: ['open', 'done'] } }, { versionId: { in: [...earlier] }, state: 'open' }] }, orderBy: [{ dueOn: 'asc' }, { id: 'asc' }] }),
    db.comment.findMany({ where: { ...scope, versionId, withdrawnAt: null }, orderBy: { at: 'asc' } }),
    db.answerEvidence.findMany({ where: { ...scope, versionId, removedAt: null }, select: { questionId: true, caption: true, file: { select: { sha256: true } } }, orderBy: { at: 'asc' } }),
    db.pack.findMany({ where: { ...scope, state: { notIn: ['handed-over'] } }, orderBy: { labelKey: 'asc' }, include: { checks: { orderBy: { at: 'desc' }, take: 1, select: { at: true, verdict: true } }, area: { select: { name: true } } } }),
    db.incident.findMany({ where: scope, orderBy: { happenedAt: 'desc' }, include: { kinds: { select: { kind: true } } } }),
    db.site.findFirst({ where: { ...scope, assessments: { some: { versions: { some: { id: versionId } } } } }, select: { keyHolder: true, keyHolderPhone: true } }),
  ]);
  return { acceptances, actions, comments, evidence, packs, incidents, site };
}
export type PaperMaterial = Awaited<ReturnType<typeof paperMaterial>>;

/** A version and those before it: what was agreed in one and is not done is still to be done in the next. */
export async function versionsUpTo(db: Db, scope: SchoolScope, versionId: string): Promise<readonly string[]> {
  const version = await db.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, select: { assessmentId: true, number: true } });
  if (version === null) return [];
  const all = await db.assessmentVersion.findMany({ where: { ...scope, assessmentId: version.assessmentId, number: { lte: version.number } }, orderBy: { number: 'asc' }, select: { id: true } });
  return all.map(({ id }) => id);
}

/** Somebody as the law wants them on a paper; null when there is nobody of that id in the school. */
export async function signerDetails(db: Db, scope: SchoolScope, personId: string) {
  const row = await db.membership.findFirst({ where: { ...scope, personId }, select: { role: true, post: true, employer: true, endedAt: true, person: { select: { name: true, phone: true } }, school: { select: { name: true } } } });
  return row === null ? null : { name: row.person.name, post: row.post, telephone: row.person.phone ?? '', employer: row.employer ?? row.school.name, role: row.role, active: row.endedAt === null };
}
