import type { AuditEvent } from '@/lib/audit/event';
import { contradictsAssessment } from '@/lib/incidents/contradicts';
import type { Facts } from '@/lib/incidents/facts';
import { incidentTitle } from '@/lib/incidents/incident-list';
import type { Writing } from '../packs/write-pack';

/**
 * Marks the signed assessments an incident contradicts, inside of the transaction that writes it: those of its site, or
 * all of the school's when nobody knows which site it was. Each is marked once for an incident.
 */
export async function askForReview({ tx, scope, by, at }: Writing, incident: { readonly id: string; readonly number: number }, facts: Facts): Promise<readonly AuditEvent[]> {
  if (!contradictsAssessment(facts)) return [];
  const { siteId } = facts.where;
  const versions = await tx.assessmentVersion.findMany({
    where: { ...scope, state: 'signed', ...(siteId === null ? {} : { assessment: { siteId } }), reviewRequests: { none: { incidentId: incident.id } } },
    select: { id: true },
  });
  const reason = `Incident ${incident.number}: ${incidentTitle(facts)}`;
  for (const { id: versionId } of versions) {
    await tx.reviewRequest.create({ data: { ...scope, versionId, cause: 'incident', reason, incidentId: incident.id, byId: by.personId, byName: by.name, at } });
  }
  return versions.map(({ id }) => ({ kind: 'review.asked', subjectId: id, data: { cause: 'incident', reason, incidentId: incident.id } }));
}
