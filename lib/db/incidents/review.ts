import type { AuditEvent } from '@/lib/audit/event';
import { addFollowUp, closeIncident, reopenIncident } from '@/lib/incidents/close-incident';
import { standingOf } from '@/lib/incidents/incident';
import { type FollowUp, type IncidentState, NOT_OPEN } from '@/lib/incidents/standing';
import type { Db } from '../client';
import type { Writing } from '../packs/write-pack';
import type { Member } from '../people/find-member';
import { changeIncident, type IncidentChanged, refused } from './change-incident';

type Added = Pick<FollowUp, 'kind' | 'text'>;

/** Adds a cause, a measure, what was reported to whom, a note, or the risk it belongs to. */
export async function followUp(db: Db, by: Member, at: Date, incidentId: string, added: Added): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.follow-up' }, async (writing, incident) => {
    const decision = addFollowUp(incident, added, by.role === 'safety-officer');
    if (!decision.ok) return refused(decision.why);
    await moveTo(writing, incidentId, decision.change.to, decision.change.followUp);
    return { ok: true, events: [{ kind: 'incident.followed-up', subjectId: incidentId, data: { kind: added.kind } }] };
  });
}

/** Closes it, when nothing is left open. */
export async function close(db: Db, by: Member, at: Date, { incidentId, note }: { readonly incidentId: string; readonly note: string }): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.close' }, async (writing, incident) => {
    const decision = closeIncident(standingOf(incident), note);
    if (!decision.ok) return refused(decision.why);
    await moveTo(writing, incidentId, 'closed', decision.change.followUp);
    return { ok: true, events: [{ kind: 'incident.closed', subjectId: incidentId, data: { note } }] };
  });
}

export async function reopen(db: Db, by: Member, at: Date, { incidentId, reason }: { readonly incidentId: string; readonly reason: string }): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.close' }, async (writing, incident) => {
    const decision = reopenIncident(incident, reason);
    if (!decision.ok) return refused(decision.why);
    await moveTo(writing, incidentId, decision.change.to, decision.change.followUp);
    return { ok: true, events: [{ kind: 'incident.opened-again', subjectId: incidentId, data: { reason } }] };
  });
}

interface CorrectiveAction { readonly incidentId: string; readonly title: string; readonly ownerName: string; readonly dueOn: string }

/** Adds something to be done so that it does not come again, with somebody to do it and a day. */
export async function addCorrectiveAction(db: Db, by: Member, at: Date, { incidentId, title, ownerName, dueOn }: CorrectiveAction): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.follow-up' }, async ({ tx, scope }, incident) => {
    if (incident.state === 'closed') return refused([NOT_OPEN]);
    const { id } = await tx.action.create({ data: { ...scope, incidentId, title, ownerName, dueOn, state: 'open', byId: by.personId, createdAt: at }, select: { id: true } });
    const added: AuditEvent = { kind: 'action.added', subjectId: id, data: { title, owner: ownerName, dueOn, controlId: null, stopId: null, incidentId } };
    return { ok: true, events: [added] };
  });
}

async function moveTo({ tx, scope, by, at }: Writing, id: string, state: IncidentState, { kind, text }: Added): Promise<void> {
  const closed = state === 'closed' ? { closedById: by.personId, closedAt: at, closedNote: text } : { closedById: null, closedAt: null, closedNote: null };
  await tx.incident.updateMany({ where: { ...scope, id }, data: { state, ...closed } });
  await tx.incidentFollowUp.create({ data: { ...scope, incidentId: id, kind, text, byId: by.personId, byName: by.name, at } });
}
