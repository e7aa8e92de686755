import type { Db } from '../client';
import type { SchoolScope } from '../scope';

/** Versions that somebody still has to do with, with what decides about each. */
export async function openPapers(db: Db, scope: SchoolScope) {
  return db.assessmentVersion.findMany({
    where: { ...scope, state: { in: ['draft', 'with-officer', 'returned', 'signed'] } },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
    select: {
      id: true, number: true, state: true, preparedById: true, preparedByName: true, scopeJson: true, reviewBy: true, signedAt: true, contentVersion: true,
      assessment: { select: { title: true, siteId: true, site: { select: { name: true } } } },
      suspensions: { where: { liftedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { reason: true } },
      reviewRequests: { where: { settledAt: null }, orderBy: { at: 'asc' }, select: { reason: true } },
      stopAcceptances: { where: { withdrawnAt: null }, orderBy: { endsOn: 'asc' }, select: { stopId: true, endsOn: true } },
      documents: { where: { kind: 'assessment', state: 'part-signed', replacedAt: null, withdrawnAt: null }, take: 1, select: { id: true } },
    },
  });
}
export type OpenPaper = Awaited<ReturnType<typeof openPapers>>[number];

/** The next events of a school that were not called off. @param most how many */
export async function nextEvents(db: Db, scope: SchoolScope, now: Date, most: number): Promise<readonly { readonly id: string; readonly title: string; readonly startsAt: Date; readonly place: string; readonly packs: number }[]> {
  const rows = await db.event.findMany({
    where: { ...scope, startsAt: { gte: now }, state: { notIn: ['cancelled', 'withdrawn'] } }, orderBy: { startsAt: 'asc' }, take: most,
    select: { id: true, title: true, startsAt: true, site: { select: { name: true } }, _count: { select: { packs: true } } },
  });
  return rows.map(({ id, title, startsAt, site, _count }) => ({ id, title, startsAt, place: site.name, packs: _count.packs }));
}
