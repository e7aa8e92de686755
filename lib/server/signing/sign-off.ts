import 'server-only';
import { can } from '@/lib/access/can';
import type { SignOffInput } from '@/lib/assessments/signing-input';
import { signAsOfficer } from '@/lib/assessments/lifecycle';
import { signOff as write } from '@/lib/db/assessments/officer-acts';
import { signerDetails, waitingPaper } from '@/lib/db/assessments/paper-material';
import { schoolScope } from '@/lib/db/scope';
import { calendarDay, momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { signPaper } from '../papers/paper-desk';
import { signerFor } from '../papers/signing-keys';
import { versionInFull } from './material';
import { extremeRisks, openStops } from './open-stops';

/**
 * The officer signs the very file that the preparer signed, which puts the assessment in force. What is signed is
 * named by its id: a paper that was made anew meanwhile is not signed by mistake.
 */
export async function signOff(input: SignOffInput, actor: Actor): Promise<Outcome> {
  const found = await versionInFull(actor, input.versionId);
  if (found === null) return refused(null, 'This assessment is not there');
  const { version } = found;
  if (!can(actor.role, 'assessment.sign-as-officer', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } })) return refused(null, 'You prepared it, so somebody else must check and sign it');
  if (version.scope.officerId !== actor.personId) return refused(null, 'The paper names another officer. It has to be handed over to you to be signed by you');
  const scope = schoolScope(actor);
  const [paper, me, school] = await Promise.all([waitingPaper(database(), scope, version.id), signerDetails(database(), scope, actor.personId), currentSchool(actor)]);
  const last = paper?.revisions[0];
  if (paper === null || last === undefined || me === null || paper.id !== input.documentId) return refused(null, 'The paper has changed since you opened it. Read the new one, then sign');
  const now = new Date();
  const today = calendarDay(now, school.timeZone);
  const standing = { state: version.state, preparerId: version.preparedById, preparerSigned: true, suspended: false };
  const may = { openStops: openStops(found, today).map((stop) => stop.title), extreme: extremeRisks(found) };
  const decision = signAsOfficer({ standing, personId: actor.personId, ...may });
  if (!decision.ok) return refused(null, decision.why);
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const ready = await signerFor(actor, input.password, now);
  const bytes = await signPaper(new Uint8Array(last.bytes), 'Officer', {
    name: me.name, post: `${me.post}, ${me.employer}`, reason: 'Checked, and agreed to', place: school.schoolName, at: now,
    when: momentWords(now, { locale: school.locale, timeZone: school.timeZone }), language: paper.language, format: paper.format === 'A4' ? 'A4' : 'LETTER',
  }, ready);
  const done = await write(database(), actor, now, {
    versionId: version.id, revision: version.revision, documentId: paper.id, documentNumber: paper.number, documentRevision: paper.revision, bytes,
    signature: { part: 'officer', signerId: actor.personId, signerName: me.name, signerPost: me.post, certificateId: ready.certificateId }, certificateFingerprint: ready.fingerprint, ...may,
  });
  return done.ok ? { ok: true, then: `/assessments/${version.id}/result` } : refused(null, done.why);
}
