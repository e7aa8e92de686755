import { randomUUID } from 'node:crypto';
import type { Db } from '@/lib/db/client';
import { recordIncident } from '@/lib/db/incidents/record-incident';
import type { Member } from '@/lib/db/people/find-member';
import type { SchoolScope } from '@/lib/db/scope';
import type { Facts } from '@/lib/incidents/facts';
import type { PhotoToKeep } from '@/lib/incidents/photo';
import type { Affected } from '@/lib/incidents/read-persons';
import { packForTest } from './pack-for-tests';

export const INCIDENT_AT = new Date('2026-11-25T15:50:00.000Z');

/** A swollen pack of our own invention; whatever matters to a test is given. */
export function factsForTest(given: Partial<Facts> = {}): Facts {
  return {
    called: ['nobody-needed'], hurt: 'no', breathed: 'no', kinds: ['swelling'], packs: [], when: { at: '2026-11-25T15:48:00.000Z', known: true },
    where: { siteId: null, areaId: null, place: 'yard' }, doing: 'charging', whatHappened: null, firstAid: null, whatWasDone: null, contacted: [], ...given,
  };
}

/** Records it and returns its id. */
export async function incidentForTest(db: Db, by: Member, given: Partial<Facts> = {}, rest: { readonly persons?: readonly Affected[]; readonly photos?: readonly PhotoToKeep[]; readonly clientKey?: string } = {}): Promise<string> {
  const recorded = await recordIncident(db, by, INCIDENT_AT, { clientKey: randomUUID(), facts: factsForTest(given), persons: [], photos: [], contentVersion: '2.0.0', ...rest });
  if (!recorded.ok) throw new Error(JSON.stringify(recorded.faults));
  return recorded.id;
}

/** Enters a pack in the register and returns its id. */
export async function packRowForTest(db: Db, scope: SchoolScope, label: string, state = 'in-use'): Promise<string> {
  const row = await db.pack.create({ data: { ...scope, ...packForTest({ id: randomUUID(), label }), labelKey: label.toLowerCase(), state }, select: { id: true } });
  return row.id;
}

/** A signed assessment of a site; returns the id of its version. */
export async function signedVersionForTest(db: Db, scope: SchoolScope, siteId: string, preparedById: string): Promise<string> {
  const { id: assessmentId } = await db.assessment.create({ data: { ...scope, siteId, title: 'Hall', createdAt: INCIDENT_AT } });
  const { id } = await db.assessmentVersion.create({ data: { ...scope, assessmentId, number: 1, state: 'signed', contentVersion: '2.0.0', preparedById, preparedByName: 'K. M.', createdAt: INCIDENT_AT } });
  return id;
}
