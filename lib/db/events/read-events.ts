import type { EventRecord } from '@/lib/events/event';
import type { ListedEvent } from '@/lib/events/event-list';
import { rowOf, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { eventOfRow, LISTED, listedOfRow, WITH_ALL } from './rows';

/** The events of a school, the latest first. */
export async function listEvents(db: Pick<Tx, 'event'>, scope: SchoolScope): Promise<readonly ListedEvent[]> {
  const rows = await db.event.findMany({ where: scope, include: LISTED, orderBy: [{ startsAt: 'desc' }, { id: 'desc' }] });
  return rows.map(listedOfRow);
}

/** An event, or null when the school has none of this id. */
export async function findEvent(db: Pick<Tx, 'event'>, scope: SchoolScope, id: string): Promise<EventRecord | null> {
  const row = await db.event.findUnique({ where: rowOf(scope, id), include: WITH_ALL });
  return row === null ? null : eventOfRow(row);
}

/** Versions of a site's assessments that matter to an event there, the latest signed first, with what decides about each. */
export async function siteAssessments(db: Pick<Tx, 'assessmentVersion'>, scope: SchoolScope, siteId: string) {
  return db.assessmentVersion.findMany({
    where: { ...scope, assessment: { siteId }, state: { in: ['signed', 'draft', 'returned', 'with-officer'] } },
    orderBy: [{ signedAt: 'desc' }, { createdAt: 'desc' }],
    select: {
      id: true, number: true, state: true, contentVersion: true, signedAt: true, reviewBy: true, assessment: { select: { title: true } },
      suspensions: { where: { liftedAt: null }, take: 1, select: { reason: true } },
      reviewRequests: { where: { settledAt: null }, take: 1, select: { reason: true } },
      stopAcceptances: { where: { withdrawnAt: null }, select: { stopId: true, endsOn: true, reason: true, byName: true } },
      documents: { where: { kind: 'assessment', replacedAt: null }, orderBy: { createdAt: 'desc' }, take: 1, select: { number: true } },
    },
  });
}
export type SiteAssessment = Awaited<ReturnType<typeof siteAssessments>>[number];
