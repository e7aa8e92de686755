import 'server-only';
import { can } from '@/lib/access/can';
import type { SignOffInput } from '@/lib/assessments/signing-input';
import { signAsOfficer } from '@/lib/assessments/lifecycle';
import { signOff as write, type SignOff } from '@/lib/db/assessments/officer-acts';
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
import { type VersionInFull, versionInFull } from './material';
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
  const [paper, school] = await Promise.all([waitingPaper(database(), schoolScope(actor), version.id), currentSchool(actor)]);
  if (paper === null || paper.id !== input.documentId) return refused(null, 'The paper has changed since you opened it. Read the new one, then sign');
  const now = new Date();
  const may = whatStandsAgainst(found, calendarDay(now, school.timeZone));
  const standing = { state: version.state, preparerId: version.preparedById, preparerSigned: true, suspended: false };
  const decision = signAsOfficer({ standing, personId: actor.personId, ...may });
  if (!decision.ok) return refused(null, decision.why);
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const done = await write(database(), actor, now, await signedOff(actor, found, paper, input.password, now));
  return done.ok ? { ok: true, then: `/assessments/${version.id}/result` } : refused(null, done.why);
}

type WaitingPaper = NonNullable<Awaited<ReturnType<typeof waitingPaper>>>;

/** The waiting paper with the officer's signature beside the preparer's, ready to be kept. Whether it may be signed, the caller has asked. */
export async function signedOff(actor: Actor, found: VersionInFull, paper: WaitingPaper, password: string, now: Date): Promise<SignOff> {
  const [me, school] = await Promise.all([signerDetails(database(), schoolScope(actor), actor.personId), currentSchool(actor)]);
  const last = paper.revisions[0];
  if (me === null || last === undefined) throw new Error(`paper ${paper.number} has no file, or its officer is not of the school`);
  const ready = await signerFor(actor, password, now);
  const bytes = await signPaper(new Uint8Array(last.bytes), 'Officer', {
    name: me.name, post: `${me.post}, ${me.employer}`, reason: 'Checked, and agreed to', place: school.schoolName, at: now,
    when: momentWords(now, { locale: school.locale, timeZone: school.timeZone }), language: paper.language, format: paper.format === 'A4' ? 'A4' : 'LETTER',
  }, ready);
  return {
    versionId: found.version.id, revision: found.version.revision, documentId: paper.id, documentNumber: paper.number, documentRevision: paper.revision, bytes,
    signature: { part: 'officer', signerId: actor.personId, signerName: me.name, signerPost: me.post, certificateId: ready.certificateId }, certificateFingerprint: ready.fingerprint,
    ...whatStandsAgainst(found, calendarDay(now, school.timeZone)),
  };
}

function whatStandsAgainst(found: VersionInFull, today: string): Pick<SignOff, 'openStops' | 'extreme'> {
  return { openStops: openStops(found, today).map((stop) => stop.title), extreme: extremeRisks(found) };
}
