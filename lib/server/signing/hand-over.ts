import 'server-only';
import { createHash, randomUUID } from 'node:crypto';
import { can } from '@/lib/access/can';
import type { HandOverInput } from '@/lib/assessments/signing-input';
import { handOver as write } from '@/lib/db/assessments/hand-over';
import { verifyLog } from '@/lib/db/audit/verify-log';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { publicAddress } from '../people/public-address';
import { newDocumentNumber } from '../papers/document-number';
import { fingerprintOfPaper, packPaper } from '../papers/paper-data';
import { makePaper, signPaper } from '../papers/paper-desk';
import { signerFor } from '../papers/signing-keys';
import { assessmentFacts, type PaperMakings } from './assessment-facts';
import { type VersionInFull, versionInFull } from './material';
import { openStops } from './open-stops';
import { paperMakings, previewOf } from './paper-makings';

/**
 * Hands an assessment to the officer: the paper is made of what stands there now and signed by its preparer, who
 * gives the password again. Also signs once more what the officer's decisions have changed since.
 */
export async function handOver(input: HandOverInput, actor: Actor): Promise<Outcome> {
  const found = await versionInFull(actor, input.versionId);
  if (found === null) return refused(null, 'This assessment is not there');
  const { version } = found;
  if (!can(actor.role, 'assessment.submit', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } })) return refused(null, 'Only the person who prepares it hands it over, because that person signs first');
  const now = new Date();
  const asked = await paperMakings(actor, found, input, now);
  if (!asked.ok) return asked;
  const { makings, today } = asked;
  if (fingerprintOfPaper(await previewOf(makings, today)) !== input.seen) return refused(null, 'The paper has changed since you opened this page. Read it again as it is now, then sign');
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const number = newDocumentNumber();
  const whole = { ...makings, number, verifyAt: await publicAddress(`/verify?number=${number}`), logEnd: await endOfLog(actor) };
  const done = await write(database(), actor, now, await signedPaper(actor, found, whole, input.password, today));
  return done.ok ? { ok: true, then: `/assessments/${version.id}/result` } : refused(null, done.why);
}

/** Where the log ends now, which stands on the paper. @throws when the log does not fit together: then nothing more is signed on top of it */
export async function endOfLog(actor: Actor): Promise<{ readonly number: number; readonly hash: string }> {
  const log = await verifyLog(database(), actor.schoolId);
  if (!log.ok) throw new Error(`the log of the school is ${log.fault} at entry ${log.sequence}`);
  return { number: log.end.sequence, hash: log.end.hash };
}

/** The paper of a version with its preparer's signature, ready to be kept. That the password is right, the caller has asked. */
export async function signedPaper(actor: Actor, found: VersionInFull, makings: PaperMakings, password: string, today: string) {
  const { school, preparer, now, number } = makings;
  const facts = assessmentFacts(makings);
  const paper = assessmentPaper(facts);
  const [made, ready] = [await makePaper(paper), await signerFor(actor, password, now)];
  const signed = await signPaper(made, 'Preparer', {
    name: preparer.name, post: `${preparer.post}, ${preparer.employer}`, reason: 'Prepared, and answers for what it says', place: school.schoolName, at: now,
    when: momentWords(now, { locale: school.locale, timeZone: school.timeZone }), language: school.locale, format: paper.format,
  }, ready);
  const { document, result, content } = found.scored;
  const resultJson = JSON.stringify(result);
  return {
    versionId: found.version.id,
    revision: found.version.revision,
    officerId: makings.officerId,
    score: {
      inputJson: JSON.stringify(document), inputHash: result.inputHash, contentVersion: content.version, engineVersion: result.engineVersion, seed: result.seed, draws: result.draws,
      resultJson, resultHash: createHash('sha256').update(resultJson, 'utf8').digest('hex'),
    },
    document: { id: randomUUID(), number, kind: 'assessment' as const, title: `${paper.title}, ${facts.place}`, format: school.paper, language: school.locale, fingerprint: facts.fingerprint, of: {}, bytes: [made, signed] as const, data: packPaper(paper) },
    signature: { part: 'preparer' as const, signerId: actor.personId, signerName: preparer.name, signerPost: preparer.post, certificateId: ready.certificateId },
    certificateFingerprint: ready.fingerprint,
    reviewBy: makings.reviewBy,
    openStops: openStops(found, today).map((stop) => stop.id),
  };
}
