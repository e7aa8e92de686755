import { randomUUID } from 'node:crypto';
import type { Fault } from '@/lib/forms/form-state';
import { addArea, addSite, changeArea, changeSite, type Decided } from '@/lib/places/decide-place';
import type { AreaDetails, SiteDetails } from '@/lib/places/place';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { MetAnother } from '../why-to-try-again';
import { findArea, findSite } from './read-sites';
import { areaColumns, siteColumns } from './rows';

/** Written, under this id; or why not. */
export type PlaceWritten = { readonly ok: true; readonly id: string } | { readonly ok: false; readonly faults: readonly Fault[] };

const NOT_THERE: PlaceWritten = { ok: false, faults: [{ field: null, message: 'Your school has no such place' }] };

/** Adds a site. */
export async function createSite(db: Db, by: Member, at: Date, input: SiteDetails): Promise<PlaceWritten> {
  const scope = schoolScope(by);
  const id = randomUUID();
  return write(db, by, at, id, async (tx) => addSite(id, input, await siteNames(tx, scope)), async (tx, site) => {
    await tx.site.create({ data: { ...scope, ...siteColumns(site), id, createdAt: at } });
  });
}

/** Changes a site, when nobody changed it since `revision`. */
export async function updateSite(db: Db, by: Member, at: Date, siteId: string, input: SiteDetails, revision: number): Promise<PlaceWritten> {
  const scope = schoolScope(by);
  return write(db, by, at, siteId, async (tx) => {
    const site = await findSite(tx, scope, siteId);
    return site === null ? null : changeSite(site, input, revision, await siteNames(tx, scope, siteId));
  }, async (tx, site) => {
    const { count } = await tx.site.updateMany({ where: { ...scope, id: siteId, revision }, data: { ...siteColumns(site), revision: { increment: 1 } } });
    if (count !== 1) throw new MetAnother('The site was changed at the same moment');
  });
}

/** Adds an area to a site of the school. */
export async function createArea(db: Db, by: Member, at: Date, siteId: string, input: AreaDetails): Promise<PlaceWritten> {
  const scope = schoolScope(by);
  const id = randomUUID();
  return write(db, by, at, id, async (tx) => {
    const site = await findSite(tx, scope, siteId);
    return site === null ? null : addArea(id, siteId, input, await areaNames(tx, scope, siteId));
  }, async (tx, area) => {
    await tx.area.create({ data: { ...scope, ...areaColumns(area), id, siteId, createdAt: at } });
  });
}

/** Changes an area, when nobody changed it since `revision`. */
export async function updateArea(db: Db, by: Member, at: Date, areaId: string, input: AreaDetails, revision: number): Promise<PlaceWritten> {
  const scope = schoolScope(by);
  return write(db, by, at, areaId, async (tx) => {
    const area = await findArea(tx, scope, areaId);
    return area === null ? null : changeArea(area, input, revision, await areaNames(tx, scope, area.siteId, areaId));
  }, async (tx, area) => {
    const { count } = await tx.area.updateMany({ where: { ...scope, id: areaId, revision }, data: { ...areaColumns(area), revision: { increment: 1 } } });
    if (count !== 1) throw new MetAnother('The area was changed at the same moment');
  });
}

async function write<Change>(db: Db, by: Member, at: Date, id: string, decide: (tx: Tx) => Promise<Decided<Change> | null>, put: (tx: Tx, change: Change) => Promise<void>): Promise<PlaceWritten> {
  return recordChange<PlaceWritten>(db, by, at, async (tx) => {
    const decided = await decide(tx);
    if (decided === null) return { value: NOT_THERE, events: [] };
    if (!decided.ok) return { value: decided, events: [] };
    await put(tx, decided.change);
    return { value: { ok: true, id }, events: decided.events };
  });
}

/** Names stay taken when a site or an area is put away: papers go on naming it. */
async function siteNames(tx: Tx, scope: SchoolScope, except?: string): Promise<readonly string[]> {
  const rows = await tx.site.findMany({ where: { ...scope, ...(except === undefined ? {} : { id: { not: except } }) }, select: { name: true } });
  return rows.map(({ name }) => name);
}

async function areaNames(tx: Tx, scope: SchoolScope, siteId: string, except?: string): Promise<readonly string[]> {
  const rows = await tx.area.findMany({ where: { ...scope, siteId, ...(except === undefined ? {} : { id: { not: except } }) }, select: { name: true } });
  return rows.map(({ name }) => name);
}
