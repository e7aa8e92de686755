import type { Area, Site } from '@/lib/places/place';
import { rowOf, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { areaOfRow, siteOfRow } from './rows';

const AREAS = { where: { archivedAt: null }, orderBy: [{ use: 'asc' as const }, { name: 'asc' as const }] };

/** The sites of a school with their areas, by name; those that were put away only when asked for. */
export async function listSites(db: Pick<Tx, 'site'>, scope: SchoolScope, also: 'archived' | 'none' = 'none'): Promise<readonly Site[]> {
  const rows = await db.site.findMany({ where: { ...scope, ...(also === 'none' ? { archivedAt: null } : {}) }, include: { areas: AREAS }, orderBy: { name: 'asc' } });
  return rows.map(siteOfRow);
}

/** A site with its areas, or null when the school has none of this id. */
export async function findSite(db: Pick<Tx, 'site'>, scope: SchoolScope, siteId: string): Promise<Site | null> {
  const row = await db.site.findUnique({ where: rowOf(scope, siteId), include: { areas: AREAS } });
  return row === null ? null : siteOfRow(row);
}

/** An area, or null when the school has none of this id. */
export async function findArea(db: Pick<Tx, 'area'>, scope: SchoolScope, areaId: string): Promise<Area | null> {
  const row = await db.area.findUnique({ where: rowOf(scope, areaId) });
  return row === null ? null : areaOfRow(row);
}
