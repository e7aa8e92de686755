import type { AuditEvent } from '@/lib/audit/event';
import { can } from '@/lib/access/can';
import type { ActionOnCase } from '@/lib/access/table';
import type { Fault } from '@/lib/forms/form-state';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Writing } from '../packs/write-pack';
import type { Member } from '../people/find-member';
import { schoolScope } from '../scope';
import { MetAnother } from '../why-to-try-again';
import { findIncident } from './read-incidents';

export type IncidentChanged = { readonly ok: true } | { readonly ok: false; readonly faults: readonly Fault[] };

/** What a change returns: its events, or why it is not made. */
export type Attempt = { readonly ok: true; readonly events: readonly AuditEvent[] } | { readonly ok: false; readonly faults: readonly Fault[] };

type Asked = { readonly incidentId: string; readonly may: Extract<ActionOnCase, `incident.${string}`> | 'incident.follow-up' | 'incident.close' | 'incident.sign' };

const NO_SUCH = 'Your school has no such incident';

/**
 * Reads an incident, asks whether this person may, and makes the change with its events in one transaction. Done again
 * from the reading when somebody else wrote in between, so no decision rests on an old state.
 */
export async function changeIncident(db: Db, by: Member, at: Date, { incidentId, may }: Asked, change: (writing: Writing, incident: IncidentRecord) => Promise<Attempt>): Promise<IncidentChanged> {
  const scope = schoolScope(by);
  return recordChange<IncidentChanged>(db, by, at, async (tx) => {
    const incident = await findIncident(tx, scope, incidentId);
    const allowed = incident !== null && can(by.role, may as ActionOnCase, { actor: by, on: { schoolId: scope.schoolId, byId: incident.byId } });
    if (!allowed) return { value: refused([NO_SUCH]), events: [] };
    const attempt = await change({ tx, scope, by, at }, incident);
    if (!attempt.ok) return { value: attempt, events: [] };
    await raiseRevision({ tx, scope, by, at }, incident);
    return { value: { ok: true }, events: attempt.events };
  });
}

/** Reasons that belong to no single field. */
export function refused(why: readonly string[], field: string | null = null): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: why.map((message) => ({ field, message })) };
}

/** Two changes of one incident at a time: the second is done again, on what the first has left. */
async function raiseRevision({ tx, scope }: Writing, { id, revision }: IncidentRecord): Promise<void> {
  const { count } = await tx.incident.updateMany({ where: { ...scope, id, revision }, data: { revision: { increment: 1 } } });
  if (count !== 1) throw new MetAnother('The incident was changed at the same moment');
}
