import 'server-only';
import { createHash, randomUUID } from 'node:crypto';
import { can } from '@/lib/access/can';
import type { HandOverInput } from '@/lib/assessments/signing-input';
import { type HandOver, handOver as write } from '@/lib/db/assessments/hand-over';
import type { AssessmentFacts } from '@/lib/papers/assessment/facts';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import type { Paper } from '@/lib/papers/paper';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { type Outcome, overtaken, refused } from '../forms/outcome';
import { publicAddress } from '../people/public-address';
import { beginPaper } from '../papers/begin-paper';
import { newDocumentNumber } from '../papers/document-number';
import { endOfLog } from '../papers/log-end';
import { fingerprintOfPaper, packPaper } from '../papers/paper-data';
import { readyToSign, type ReadyToSign, signAs } from '../papers/sign-as';
import { assessmentFacts, type PaperMakings } from './assessment-facts';
import { type VersionInFull, versionInFull } from './material';
import { openStops } from './open-stops';
import { paperMakings, previewOf } from './paper-makings';

/**
 * Hands an assessment to the officer: begins to make the paper of what stands there now, signed by its preparer, who
 * gives the password again. Also signs once more what the officer's decisions have changed since.
 */
export async function handOver(actor: Actor, input: HandOverInput): Promise<Outcome> {
  const found = await versionInFull(actor, input.versionId);
  if (found === null) return refused(null, 'This assessment is not there');
  const { version } = found;
  if (!can(actor.role, 'assessment.submit', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } })) return refused(null, 'Only the person who prepares it hands it over, because that person signs first');
  const now = new Date();
  const asked = await paperMakings(actor, found, input, now);
  if (!asked.ok) return asked;
  const { makings, today } = asked;
  if (fingerprintOfPaper(await previewOf(makings, today)) !== input.seen) return overtaken('The paper has changed since you opened this page. Read it again as it is now, then sign');
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const number = newDocumentNumber();
  const whole = { ...makings, number, verifyAt: await publicAddress(`/verify?number=${number}`), twinAt: await publicAddress(`/assessments/${version.id}/paper`), logEnd: await endOfLog(actor) };
  const [ready, toSign] = [await readyToSign(actor, input.password, now), paperToSign(whole)];
  return { ok: true, then: beginPaper(actor, {
    key: `assessment ${version.id} ${input.seen}`,
    title: `${toSign.paper.title}, ${toSign.facts.place}`,
    back: `/assessments/${version.id}/hand-over`,
    paper: toSign.paper,
    keep: async (made) => {
      const done = await write(database(), actor, now, await signedPaper(found, whole, toSign, ready, made, today));
      return done.ok ? { ok: true, then: `/assessments/${version.id}/result` } : done;
    },
  }) };
}

export interface PaperToSign { readonly facts: AssessmentFacts; readonly paper: Paper }

/** The paper of a version as it is signed, out of all that it is made from. */
export function paperToSign(makings: PaperMakings): PaperToSign {
  const facts = assessmentFacts(makings);
  return { facts, paper: assessmentPaper(facts) };
}

/** A paper that was made, with its preparer's signature, ready to be kept. Whether it may be signed, the caller has asked. */
export async function signedPaper(found: VersionInFull, { school, now, number, officerId, reviewBy }: PaperMakings, { facts, paper }: PaperToSign, ready: ReadyToSign, made: Uint8Array, today: string): Promise<HandOver> {
  const { bytes, signature: { certificateFingerprint, ...signature } } = await signAs(ready, made, paper, 'Preparer', 'Prepared, and answers for what it says', now);
  const { document, result, content } = found.scored;
  const resultJson = JSON.stringify(result);
  return {
    versionId: found.version.id,
    revision: found.version.revision,
    officerId,
    score: {
      inputJson: JSON.stringify(document), inputHash: result.inputHash, contentVersion: content.version, engineVersion: result.engineVersion, seed: result.seed, draws: result.draws,
      resultJson, resultHash: createHash('sha256').update(resultJson, 'utf8').digest('hex'),
    },
    document: { id: randomUUID(), number, kind: 'assessment', title: `${paper.title}, ${facts.place}`, format: school.paper, language: school.locale, fingerprint: facts.fingerprint, of: {}, bytes: [made, bytes], data: packPaper(paper) },
    signature, certificateFingerprint, reviewBy, settings: found.version.settings,
    openStops: openStops(found, today).map((stop) => stop.id),
  };
}
