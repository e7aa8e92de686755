import { randomUUID } from 'node:crypto';
import type { AuditEvent } from '@/lib/audit/event';
import type { PackLimits } from '@/lib/content/model';
import type { Fault } from '@/lib/forms/form-state';
import type { Decided } from '@/lib/packs/decided';
import type { PackDetails } from '@/lib/packs/pack';
import { stateOfNewPack } from '@/lib/packs/states/new-pack-state';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { takenLabels } from './read-packs';
import { detailColumns } from './rows';
import { addStateChange, type Writing } from './write-pack';

export type Added = { readonly ok: true; readonly ids: readonly string[] } | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Enters packs, all or none. The decision gets the labels that are taken at that moment.
 * @param how `import` writes an entry for the table as a whole besides those of the packs
 */
export async function addPacks(db: Db, by: Member, at: Date, limits: PackLimits, how: 'form' | 'import', decide: (taken: readonly string[]) => Decided<readonly PackDetails[]>): Promise<Added> {
  const scope = schoolScope(by);
  return recordChange<Added>(db, by, at, async (tx) => {
    const decided = decide(await takenLabels(tx, scope));
    if (!decided.ok) return { value: decided, events: [] };
    const sites = await sitesOfAreas(tx, scope, decided.change);
    const stray = decided.change.find(({ areaId }) => areaId !== null && !sites.has(areaId));
    if (stray !== undefined) return { value: { ok: false, faults: [{ field: 'areaId', message: 'Choose one of your areas' }] }, events: [] };
    const made: { readonly id: string; readonly label: string }[] = [];
    for (const details of decided.change) made.push(await addOne({ tx, scope, by, at }, limits, details, sites));
    return { value: { ok: true, ids: made.map(({ id }) => id) }, events: entriesOf(made, how, scope) };
  });
}

async function addOne(writing: Writing, limits: PackLimits, details: PackDetails, sites: ReadonlyMap<string, string>): Promise<{ readonly id: string; readonly label: string }> {
  const { tx, scope, at } = writing;
  const state = stateOfNewPack(limits, details);
  const id = randomUUID();
  const siteId = details.areaId === null ? null : (sites.get(details.areaId) ?? null);
  await tx.pack.create({ data: { ...scope, ...detailColumns(details), id, siteId, state: state.to, stateReason: state.reason, stateSince: at, createdAt: at } });
  await addStateChange(writing, { id, state: null }, { ...state, placeNow: null, placeNote: null, inSand: null });
  return { id, label: details.label };
}

/** The site of each area that is named, of this school only. */
export async function sitesOfAreas(tx: Pick<Tx, 'area'>, scope: SchoolScope, packs: readonly Pick<PackDetails, 'areaId'>[]): Promise<ReadonlyMap<string, string>> {
  const named = [...new Set(packs.flatMap(({ areaId }) => (areaId === null ? [] : [areaId])))];
  const rows = named.length === 0 ? [] : await tx.area.findMany({ where: { ...scope, id: { in: named } }, select: { id: true, siteId: true } });
  return new Map(rows.map(({ id, siteId }) => [id, siteId]));
}

function entriesOf(made: readonly { readonly id: string; readonly label: string }[], how: 'form' | 'import', scope: SchoolScope): readonly AuditEvent[] {
  const added = made.map(({ id, label }): AuditEvent => ({ kind: 'pack.added', subjectId: id, data: { label } }));
  const whole: AuditEvent = { kind: 'packs.imported', subjectId: scope.schoolId, data: { labels: made.map(({ label }) => label) } };
  return how === 'import' ? [...added, whole] : added;
}
