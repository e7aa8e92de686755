import type { Db } from '../client';
import { keepDocument, type MadeSignature } from '../documents/keep-document';
import type { NewDocument } from '../documents/write-document';
import type { Member } from '../people/find-member';
import type { SchoolScope } from '../scope';
import { changeIncident, type IncidentChanged, refused } from './change-incident';

export interface SignedIncident {
  readonly incidentId: string;
  /** of the incident, as the paper tells it */
  readonly revision: number;
  readonly document: Omit<NewDocument, 'kind' | 'of'>;
  readonly signature: MadeSignature;
}

const CHANGED = 'The incident was changed while its paper was made. Read it as it is now, then sign';

/** Keeps the signed paper of a closed incident in the place of an earlier one: paper, signature and log, all or nothing. */
export async function keepSignedIncident(db: Db, by: Member, at: Date, { incidentId, revision, document, signature }: SignedIncident): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId, may: 'incident.sign' }, async ({ tx, scope }, incident) => {
    if (incident.state !== 'closed' || incident.revision !== revision) return refused([CHANGED]);
    return { ok: true, events: await keepDocument(tx, scope, at, { ...document, kind: 'incident', of: { incidentId } }, signature, 'signed') };
  });
}

/** SHA-256 of the photos that are kept with an incident, in their order. */
export async function photoHashes(db: Pick<Db, 'incidentPhoto'>, scope: SchoolScope, incidentId: string): Promise<readonly string[]> {
  const photos = await db.incidentPhoto.findMany({ where: { ...scope, incidentId, removedAt: null }, orderBy: { id: 'asc' }, select: { file: { select: { sha256: true } } } });
  return photos.map(({ file }) => file.sha256);
}
