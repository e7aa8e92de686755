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

/** The next events of a school that were not called off, with who they wait for. */
export async function nextEvents(db: Db, scope: SchoolScope, now: Date) {
  return db.event.findMany({
    where: { ...scope, endsAt: { gte: now }, state: { notIn: ['cancelled', 'withdrawn'] } }, orderBy: [{ startsAt: 'asc' }, { id: 'asc' }],
    select: {
      id: true, title: true, startsAt: true, state: true, preparedById: true, preparedByName: true, officerId: true, site: { select: { name: true } }, _count: { select: { packs: true } },
      documents: { where: { kind: 'event', state: 'part-signed', replacedAt: null, withdrawnAt: null }, take: 1, select: { id: true } },
    },
  });
}
export type NextEvent = Awaited<ReturnType<typeof nextEvents>>[number];
