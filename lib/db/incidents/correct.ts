import type { FactName, Facts } from '@/lib/incidents/facts';
import { correctIncident } from '@/lib/incidents/correct-incident';
import type { Affected } from '@/lib/incidents/read-persons';
import { NOT_OPEN } from '@/lib/incidents/standing';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { addCorrection } from './add-correction';
import { askForReview } from './ask-review';
import { changeIncident, type IncidentChanged, refused } from './change-incident';
import { linkPacks } from './link-packs';
import { placeFault } from './record-incident';

interface FactCorrection<Name extends FactName> { readonly incidentId: string; readonly field: Name; readonly after: Facts[Name]; readonly reason: string }

/** Says one fact anew, with a reason. Packs that are named now are isolated; an assessment it now contradicts is marked. */
export async function correctFact<Name extends FactName>(db: Db, by: Member, at: Date, { incidentId, field, after, reason }: FactCorrection<Name>): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.correct' }, async (writing, incident) => {
    const decision = correctIncident(incident, field, after);
    if (!decision.ok) return refused(decision.why);
    const facts = { ...incident.facts, [field]: after };
    const fault = await placeFault(writing.tx, writing.scope, facts);
    if (fault !== null) return { ok: false, faults: [fault] };
    const number = await addCorrection(writing, incident, { field, before: decision.change.before, after, reason });
    const isolated = await linkPacks(writing, { incidentId, number: incident.number }, decision.change.packsAdded);
    const reviews = await askForReview(writing, incident, facts);
    return { ok: true, events: [{ kind: 'incident.corrected', subjectId: incidentId, data: { number, field, reason } }, ...isolated, ...reviews] };
  });
}

/** Adds people who were affected. The correction holds how many, not who: its row is for good, theirs is not. */
export async function addPersons(db: Db, by: Member, at: Date, { incidentId, persons, reason }: { readonly incidentId: string; readonly persons: readonly Affected[]; readonly reason: string }): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.correct' }, async (writing, incident) => {
    if (incident.state === 'closed') return refused([NOT_OPEN]);
    if (persons.length === 0) return refused(['Choose who it was'], 'person1Role');
    const { tx, scope } = writing;
    const before = incident.persons.length;
    await tx.incidentPerson.createMany({ data: persons.map((person) => ({ ...scope, incidentId, ...person })) });
    const number = await addCorrection(writing, incident, { field: 'persons', before, after: before + persons.length, reason });
    return { ok: true, events: [{ kind: 'incident.corrected', subjectId: incidentId, data: { number, field: 'persons', reason } }] };
  });
}
