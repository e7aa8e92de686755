import 'server-only';
import { randomUUID } from 'node:crypto';
import { can } from '@/lib/access/can';
import { keepSignedIncident } from '@/lib/db/incidents/sign-incident';
import type { SignIncidentInput } from '@/lib/incidents/sign-input';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { type Outcome, overtaken, refused } from '../forms/outcome';
import { beginPaper } from '../papers/begin-paper';
import { newDocumentNumber } from '../papers/document-number';
import { endOfLog } from '../papers/log-end';
import { packPaper } from '../papers/paper-data';
import { readyToSign, signAs } from '../papers/sign-as';
import { currentSchool } from '../people/current-school';
import { publicAddress } from '../people/public-address';
import { incidentPaperOf, incidentPreview } from './incident-paper';
import { findIncident } from './read-incidents';

/**
 * Begins to make the paper of a closed incident and signs it as the officer who read it, with the password given again.
 * What was read is held to what is signed by its fingerprint.
 */
export async function signIncident(actor: Actor, input: SignIncidentInput): Promise<Outcome> {
  if (!can(actor.role, 'incident.sign')) return refused(null, 'Only a safety officer signs the paper of an incident');
  const incident = await findIncident(actor, input.incidentId);
  if (incident === null) return refused(null, 'Your school has no such incident');
  if (incident.state !== 'closed') return refused(null, 'It is not closed. Close it, then sign its paper');
  const preview = await incidentPreview(actor, incident);
  if (preview.seen !== input.seen) return overtaken('The incident was changed since you opened this page. Read it as it is now, then sign');
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const [now, number] = [new Date(), newDocumentNumber()];
  const paper = await incidentPaperOf(actor, incident, { number, madeAt: now.toISOString(), fingerprint: preview.fingerprint, verifyAt: await publicAddress(`/verify?number=${number}`), logEnd: await endOfLog(actor) });
  const [ready, school] = [await readyToSign(actor, input.password, now), await currentSchool(actor)];
  return { ok: true, then: beginPaper(actor, {
    key: `incident ${incident.id} ${input.seen}`, title: paper.title, back: `/incidents/${incident.id}`, paper,
    keep: async (made) => {
      const { bytes, signature } = await signAs(ready, made, paper, 'Officer', 'Closed, and true as far as it is known', now);
      const document = { id: randomUUID(), number, title: paper.title, format: school.paper, language: school.locale, fingerprint: preview.fingerprint, bytes: [made, bytes] as const, data: packPaper(paper) };
      const kept = await keepSignedIncident(database(), actor, now, { incidentId: incident.id, revision: incident.revision, document, signature });
      return kept.ok ? { ok: true, then: `/incidents/${incident.id}/paper` } : { ok: false, why: kept.faults.map(({ message }) => message).join('. ') };
    },
  }) };
}
