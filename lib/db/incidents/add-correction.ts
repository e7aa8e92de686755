import type { IncidentRecord } from '@/lib/incidents/incident';
import type { Writing } from '../packs/write-pack';

interface NewCorrection { readonly field: string; readonly before: unknown; readonly after: unknown; readonly reason: string }

/** Adds what is said instead, and why; returns its number in the incident. */
export async function addCorrection({ tx, scope, by, at }: Writing, incident: IncidentRecord, { field, before, after, reason }: NewCorrection): Promise<number> {
  const number = incident.corrections.length + 1;
  await tx.incidentCorrection.create({
    data: { ...scope, incidentId: incident.id, number, field, beforeJson: JSON.stringify(before), afterJson: JSON.stringify(after), reason, byId: by.personId, byName: by.name, at },
  });
  return number;
}
