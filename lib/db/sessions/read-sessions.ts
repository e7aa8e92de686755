import { PointAnswersSchema, type Session } from '@/lib/sessions/session';
import type { Prisma } from '../generated/sqlite/client';
import { rowOf, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';

const WITH_PACKS = { site: { select: { name: true } }, packs: { include: { pack: { select: { label: true, labelKey: true } } } } } satisfies Prisma.SessionInclude;

type Row = Prisma.SessionGetPayload<{ include: typeof WITH_PACKS }>;

/** The sessions of a school, the latest first. @param most how many; all when left out */
export async function listSessions(db: Pick<Tx, 'session'>, scope: SchoolScope, most?: number): Promise<readonly Session[]> {
  const rows = await db.session.findMany({ where: scope, include: WITH_PACKS, orderBy: [{ startedAt: 'desc' }, { id: 'desc' }], ...(most === undefined ? {} : { take: most }) });
  return rows.map(sessionOfRow);
}

/** A session, or null when the school has none of this id. */
export async function findSession(db: Pick<Tx, 'session'>, scope: SchoolScope, sessionId: string): Promise<Session | null> {
  const row = await db.session.findUnique({ where: rowOf(scope, sessionId), include: WITH_PACKS });
  return row === null ? null : sessionOfRow(row);
}

const BY_LABEL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function sessionOfRow({ site, packs, openingJson, closingJson, ...row }: Row): Session {
  const { id, siteId, startedAt, endedAt, peoplePresent, note, byId, byName, revision } = row;
  return {
    id, siteId, siteName: site.name, startedAt, endedAt, peoplePresent, note, byId, byName, revision,
    opening: PointAnswersSchema.parse(JSON.parse(openingJson)), closing: PointAnswersSchema.parse(JSON.parse(closingJson)),
    packs: packs.map(({ packId, charges, crashes, pack }) => ({ packId, charges, crashes, label: pack.label })).sort((a, b) => BY_LABEL.compare(a.label, b.label)),
  };
}
