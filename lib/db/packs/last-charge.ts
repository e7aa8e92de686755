import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** When a pack was last charged, as the sessions say, and who kept that session's log. */
export interface LastCharge { readonly sessionId: string; readonly at: Date; readonly byName: string; readonly place: string }

/** The last session in which a pack was charged, or null. */
export async function lastChargeOf(db: Pick<Tx, 'sessionPack'>, scope: SchoolScope, packId: string): Promise<LastCharge | null> {
  const row = await db.sessionPack.findFirst({
    where: { ...scope, packId, charges: { gt: 0 } },
    orderBy: { session: { startedAt: 'desc' } },
    select: { session: { select: { id: true, startedAt: true, byName: true, site: { select: { name: true } } } } },
  });
  return row === null ? null : { sessionId: row.session.id, at: row.session.startedAt, byName: row.session.byName, place: row.session.site.name };
}
