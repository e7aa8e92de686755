import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** A site or an area that was put away, by its name. */
export interface PutAwayPlace { readonly id: string; readonly name: string; readonly archivedAt: Date | null }

const SHOWN = { id: true, name: true, archivedAt: true } as const;

export function sitesPutAway(db: Pick<Tx, 'site'>, scope: SchoolScope): Promise<readonly PutAwayPlace[]> {
  return db.site.findMany({ where: { ...scope, archivedAt: { not: null } }, select: SHOWN, orderBy: { name: 'asc' } });
}

export function areasPutAway(db: Pick<Tx, 'area'>, scope: SchoolScope, siteId: string): Promise<readonly PutAwayPlace[]> {
  return db.area.findMany({ where: { ...scope, siteId, archivedAt: { not: null } }, select: SHOWN, orderBy: { name: 'asc' } });
}
