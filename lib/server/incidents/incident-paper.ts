import 'server-only';
import { can } from '@/lib/access/can';
import { currentContent } from '@/lib/content/editions';
import { signerDetails } from '@/lib/db/assessments/paper-material';
import { dataOf, fileOf, papersOf, type StoredFile } from '@/lib/db/documents/read-document';
import { photoHashes } from '@/lib/db/incidents/sign-incident';
import { schoolScope } from '@/lib/db/scope';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { incidentPaper } from '@/lib/papers/incident-paper';
import type { Paper } from '@/lib/papers/paper';
import type { Actor } from '../actor';
import { database } from '../database';
import { shortFingerprint } from '../papers/document-number';
import { fingerprintOfPaper, unpackPaper } from '../papers/paper-data';
import { currentSchool } from '../people/current-school';
import { publicAddress } from '../people/public-address';
import { incidentPaperFacts } from './paper-facts';
import { factNames, findIncident } from './read-incidents';

/** What a paper has only once it is made. */
export type MadeOnce = Pick<Paper, 'number' | 'madeAt' | 'fingerprint' | 'verifyAt'> & { readonly logEnd: { readonly number: number; readonly hash: string } | null };

export const riskTitle = (risk: string): string => (risk === 'none' ? 'None: it does not count' : (currentContent.scenarios.find(({ id }) => id === risk)?.title ?? risk));

/** The paper of an incident as the actor would sign it. @throws when the actor is not of the school */
export async function incidentPaperOf(actor: Actor, incident: IncidentRecord, made: MadeOnce): Promise<Paper> {
  const scope = schoolScope(actor);
  const [officer, school, names, hashes] = [await signerDetails(database(), scope, actor.personId), await currentSchool(actor), await factNames(actor), await photoHashes(database(), scope, incident.id)];
  if (officer === null) throw new Error('whoever signs is not of the school');
  return incidentPaper(incidentPaperFacts(incident, {
    ...made, school: school.schoolName, format: school.paper === 'A4' ? 'A4' : 'LETTER', language: school.locale, names, riskTitle, photoHashes: hashes,
    twinAt: await publicAddress(`/incidents/${incident.id}/paper`), officer: { name: officer.name, post: [officer.post, officer.employer].filter((part) => part !== '').join(', ') },
  }));
}

const NUMBER_LATER = 'number given when signed';

export interface IncidentPreview { readonly paper: Paper; /** to be sent back with the signature */ readonly seen: string; /** of what it was made from, short */ readonly fingerprint: string }

/** The paper as it would be signed now, but for what its making adds; the same as long as nothing changes. */
export async function incidentPreview(actor: Actor, incident: IncidentRecord): Promise<IncidentPreview> {
  const paper = await incidentPaperOf(actor, incident, { number: NUMBER_LATER, madeAt: (incident.closedAt ?? incident.recordedAt).toISOString(), fingerprint: '', verifyAt: await publicAddress('/verify'), logEnd: null });
  const seen = fingerprintOfPaper(paper);
  return { paper, seen, fingerprint: shortFingerprint(seen) };
}

export type IncidentPapers = Awaited<ReturnType<typeof papersOf>>;

/** Every paper of an incident that the actor may read, the latest first; null when there is no such incident for them. */
export async function incidentPapers(actor: Actor, incidentId: string): Promise<{ readonly incident: IncidentRecord; readonly papers: IncidentPapers } | null> {
  const incident = await findIncident(actor, incidentId);
  if (incident === null) return null;
  return { incident, papers: can(actor.role, 'document.read') ? await papersOf(database(), schoolScope(actor), { incidentId }) : [] };
}

/** The paper of an incident that counts: signed since it was closed last. */
export function currentPaper({ incident, papers }: { readonly incident: IncidentRecord; readonly papers: IncidentPapers }): IncidentPapers[number] | null {
  const { closedAt } = incident;
  return papers.find((paper) => paper.replacedAt === null && closedAt !== null && paper.createdAt >= closedAt) ?? null;
}

/** What the latest paper of an incident says, out of the data its file was made from. */
export async function keptIncidentPaper(actor: Actor, incidentId: string): Promise<Paper | null> {
  if ((await incidentPapers(actor, incidentId)) === null || !can(actor.role, 'document.read')) return null;
  const data = await dataOf(database(), schoolScope(actor), { kind: 'incident', incidentId });
  return data === null ? null : unpackPaper(data);
}

/** The stored file of an incident's latest paper, or of the one of a number. */
export async function incidentPaperFile(actor: Actor, incidentId: string, number?: string): Promise<StoredFile | null> {
  if ((await incidentPapers(actor, incidentId)) === null || !can(actor.role, 'document.read')) return null;
  return fileOf(database(), schoolScope(actor), { kind: 'incident', incidentId }, number);
}
