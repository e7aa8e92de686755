import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** The names of all sites and areas of a school by their ids, of those put away too: an old incident still names them. */
export async function placeNames(db: Pick<Tx, 'site' | 'area'>, scope: SchoolScope): Promise<ReadonlyMap<string, string>> {
  const columns = { where: scope, select: { id: true, name: true } } as const;
  const rows = [...(await db.site.findMany(columns)), ...(await db.area.findMany(columns))];
  return new Map(rows.map(({ id, name }) => [id, name]));
}
