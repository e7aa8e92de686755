import type { AuditEvent } from '@/lib/audit/event';
import type { Fault } from '@/lib/forms/form-state';
import type { Facts } from '@/lib/incidents/facts';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import type { NewIncident } from '@/lib/incidents/read-incident';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Writing } from '../packs/write-pack';
import type { Member } from '../people/find-member';
import { rowOf, schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { askForReview } from './ask-review';
import { keepPhotos } from './keep-photos';
import { linkPacks } from './link-packs';
import { columnsOfFacts } from './rows';

export type IncidentRecorded = { readonly ok: true; readonly id: string } | { readonly ok: false; readonly faults: readonly Fault[] };

interface ToRecord extends NewIncident {
  readonly contentVersion: string;
  readonly photos: readonly PhotoToKeep[];
}

/**
 * Records an incident, isolates its packs, marks the assessments it contradicts and takes the draft away: all of it in
 * one transaction. The same form sent again is the same incident.
 */
export async function recordIncident(db: Db, by: Member, at: Date, incident: ToRecord): Promise<IncidentRecorded> {
  const scope = schoolScope(by);
  return recordChange<IncidentRecorded>(db, by, at, async (tx) => {
    const before = await tx.incident.findUnique({ where: { schoolId_clientKey: { ...scope, clientKey: incident.clientKey } }, select: { id: true } });
    if (before !== null) return { value: { ok: true, id: before.id }, events: [] };
    const fault = await placeFault(tx, scope, incident.facts);
    if (fault !== null) return { value: { ok: false, faults: [fault] }, events: [] };
    const written = await writeIncident({ tx, scope, by, at }, incident);
    return { value: { ok: true, id: written.id }, events: written.events };
  });
}

async function writeIncident(writing: Writing, { clientKey, facts, persons, contentVersion, photos }: ToRecord): Promise<{ readonly id: string; readonly events: readonly AuditEvent[] }> {
  const { tx, scope, by, at } = writing;
  const last = await tx.incident.aggregate({ where: scope, _max: { number: true } });
  const number = (last._max.number ?? 0) + 1;
  const { id } = await tx.incident.create({
    data: { ...scope, ...columnsOfFacts(facts), number, clientKey, contentVersion, state: 'recorded', byId: by.personId, byName: by.name, recordedAt: at },
    select: { id: true },
  });
  await tx.incidentKind.createMany({ data: facts.kinds.map((kind) => ({ ...scope, incidentId: id, kind })) });
  await tx.incidentPerson.createMany({ data: persons.map((person) => ({ ...scope, incidentId: id, ...person })) });
  const recorded: AuditEvent = { kind: 'incident.recorded', subjectId: id, data: { number, happenedAt: facts.when.at, kinds: [...facts.kinds], packs: facts.packs.map(({ label }) => label), persons: persons.length } };
  const isolated = await linkPacks(writing, { incidentId: id, number }, facts.packs);
  const reviews = await askForReview(writing, { id, number }, facts);
  const kept = await keepPhotos(writing, id, photos);
  await tx.incidentDraft.deleteMany({ where: { ...scope, personId: by.personId } });
  return { id, events: [recorded, ...isolated, ...reviews, ...kept] };
}

/** A place that is not the school's, or an area that is not the site's, is refused in words before the database does it. */
export async function placeFault(tx: Tx, scope: SchoolScope, { where: { siteId, areaId } }: Pick<Facts, 'where'>): Promise<Fault | null> {
  const site = siteId === null ? null : await tx.site.findUnique({ where: rowOf(scope, siteId), select: { id: true } });
  const area = areaId === null ? null : await tx.area.findUnique({ where: rowOf(scope, areaId), select: { siteId: true } });
  const isRight = (siteId === null || site !== null) && (areaId === null || area?.siteId === siteId);
  return isRight ? null : { field: 'where', message: 'Choose a place of your school' };
}
