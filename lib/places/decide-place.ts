import type { AuditEvent } from '@/lib/audit/event';
import type { Fault } from '@/lib/forms/form-state';
import type { Area, AreaDetails, Site, SiteDetails } from './place';

/** What follows from a command: what is to be changed and what stands in the log of it, or why not, in words. */
export type Decided<Change> =
  | { readonly ok: true; readonly change: Change; readonly events: readonly AuditEvent[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

type Scalar = string | number | boolean | null;
type Changes = Record<string, { from: Scalar; to: Scalar }>;

const CHANGED_MEANWHILE = 'Somebody else changed this since you opened it. Open it again; what you typed still stands here';
const same = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Decides about a new site: its name is free. */
export function addSite(id: string, input: SiteDetails, names: readonly string[]): Decided<SiteDetails> {
  if (names.some((name) => same(name, input.name))) return taken('You have a site with this name already');
  return { ok: true, change: input, events: [{ kind: 'site.added', subjectId: id, data: { name: input.name } }] };
}

/** Decides about a changed site. @param names of the school's other sites */
export function changeSite(site: Site, input: SiteDetails, revision: number, names: readonly string[]): Decided<SiteDetails> {
  if (site.revision !== revision) return { ok: false, faults: [{ field: null, message: CHANGED_MEANWHILE }] };
  if (names.some((name) => same(name, input.name))) return taken('You have a site with this name already');
  return { ok: true, change: input, events: changed('site.changed', site.id, changesOf(site, input)) };
}

/** Decides about a new area of a site. @param names of the site's areas */
export function addArea(id: string, siteId: string, input: AreaDetails, names: readonly string[]): Decided<AreaDetails> {
  if (names.some((name) => same(name, input.name))) return taken('This site has an area with this name already');
  return { ok: true, change: input, events: [{ kind: 'area.added', subjectId: id, data: { name: input.name, use: input.use, siteId } }] };
}

/** Decides about a changed area. @param names of the site's other areas */
export function changeArea(area: Area, input: AreaDetails, revision: number, names: readonly string[]): Decided<AreaDetails> {
  if (area.revision !== revision) return { ok: false, faults: [{ field: null, message: CHANGED_MEANWHILE }] };
  if (names.some((name) => same(name, input.name))) return taken('This site has an area with this name already');
  return { ok: true, change: input, events: changed('area.changed', area.id, changesOf(area, input)) };
}

const taken = (message: string): Decided<never> => ({ ok: false, faults: [{ field: 'name', message }] });

function changed(kind: 'site.changed' | 'area.changed', subjectId: string, changes: Changes): readonly AuditEvent[] {
  return Object.keys(changes).length === 0 ? [] : [{ kind, subjectId, data: { changes } }];
}

function changesOf<Details extends object>(before: Details, after: Details): Changes {
  const names = Object.keys(after) as (keyof Details & string)[];
  return Object.fromEntries(names.filter((name) => before[name] !== after[name]).map((name) => [name, { from: scalar(before[name]), to: scalar(after[name]) }]));
}

/** Details hold nothing but these. */
function scalar(value: unknown): Scalar {
  if (value === null || typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') return value;
  throw new TypeError('a detail of a place is text, number, yes or no');
}
