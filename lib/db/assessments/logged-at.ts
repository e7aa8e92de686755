import type { ListedIncident } from '@/lib/incidents/incident-list';
import { riskOf } from '@/lib/incidents/standing';
import { PointAnswersSchema, type Session } from '@/lib/sessions/session';
import type { Db } from '../client';
import { followUpOfRow, listedOfRow, WITH_FACTS } from '../incidents/rows';
import type { SchoolScope } from '../scope';

export type LoggedSession = Pick<Session, 'startedAt' | 'endedAt' | 'opening'> & { readonly packs: readonly { readonly packId: string; readonly label: string; readonly charges: number; readonly crashes: number | null }[] };

/** What a school logged at one site. */
export interface LoggedAt {
  readonly sessions: readonly LoggedSession[];
  /** at this site, and at none that the register knows: on the way, or elsewhere */
  readonly incidents: readonly { readonly facts: ListedIncident['facts']; readonly risk: string | null }[];
  readonly flies: boolean;
  /** versions of this site that were in force at some time */
  readonly inForce: readonly string[];
}

/** Sessions and incidents since a date, the newest sessions last; with whether the team flies there. */
export async function loggedAt(db: Db, scope: SchoolScope, siteId: string, since: Date): Promise<LoggedAt> {
  const [sessions, incidents, arenas, versions] = await Promise.all([
    db.session.findMany({ where: { ...scope, siteId, startedAt: { gte: since } }, select: { startedAt: true, endedAt: true, openingJson: true, packs: { select: { packId: true, charges: true, crashes: true } } }, orderBy: { startedAt: 'asc' } }),
    db.incident.findMany({ where: { ...scope, happenedAt: { gte: since } }, include: { ...WITH_FACTS, followUps: { orderBy: [{ at: 'asc' }, { id: 'asc' }] } } }),
    db.area.count({ where: { ...scope, siteId, archivedAt: null, use: 'arena' } }),
    db.assessmentVersion.findMany({ where: { ...scope, assessment: { siteId }, signedAt: { not: null } }, select: { id: true }, orderBy: { signedAt: 'asc' } }),
  ]);
  return {
    sessions: sessions.map(({ openingJson, packs, ...session }) => ({ ...session, opening: PointAnswersSchema.parse(JSON.parse(openingJson)), packs: packs.map((pack) => ({ ...pack, label: '' })) })),
    incidents: incidents.map((row) => ({ facts: listedOfRow(row).facts, risk: riskOf(row.followUps.map(followUpOfRow)) })).filter(({ facts: { where } }) => where.siteId === null || where.siteId === siteId),
    flies: arenas > 0,
    inForce: versions.map(({ id }) => id),
  };
}
