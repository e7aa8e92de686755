import 'server-only';
import { can } from '@/lib/access/can';
import type { ActionOnCase } from '@/lib/access/table';
import type { AcceptStopInput, ReturnInput, SettleReviewInput, SuspendInput } from '@/lib/assessments/signing-input';
import { contentByVersion } from '@/lib/content/editions';
import type { NotDone } from '@/lib/db/assessments/not-done';
import { acceptStopOf, liftSuspensionOf, returnVersion, suspendVersion } from '@/lib/db/assessments/officer-acts';
import { settleReviewOf } from '@/lib/db/assessments/settle-review';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';

const NOT_THERE = 'This assessment is not there';
const NOT_YOURS = 'You prepared it, so somebody else must decide on it';

/** What was decided is seen where the assessment stands, so that is where the browser goes. */
const outcome = (done: { readonly ok: true } | NotDone, versionId: string, page: 'result' | 'review' = 'result'): Outcome => (done.ok ? { ok: true, then: `/assessments/${versionId}/${page}` } : refused(null, done.why));

/** Returns what lies with the officer to its preparer, with what is to be changed. */
export async function returnAssessment(input: ReturnInput, actor: Actor): Promise<Outcome> {
  const version = await judged(actor, input.versionId, 'assessment.return');
  if (typeof version === 'string') return refused(null, version);
  return outcome(await returnVersion(database(), actor, new Date(), version.id, input.comment), version.id);
}

/** Accepts a stop condition in writing, as far as the content lets anybody. */
export async function acceptStop(input: AcceptStopInput, actor: Actor): Promise<Outcome> {
  const version = await judged(actor, input.versionId, 'assessment.accept-stop');
  if (typeof version === 'string') return refused(null, version);
  const stop = contentByVersion(version.contentVersion)?.stops.find((one) => one.id === input.stopId);
  if (stop === undefined) return refused('stopId', 'There is no such stop condition');
  const today = calendarDay(new Date(), (await currentSchool(actor)).timeZone);
  return outcome(await acceptStopOf(database(), actor, new Date(), version.id, stop, input, today), version.id, 'review');
}

async function judged(actor: Actor, versionId: string, action: ActionOnCase) {
  const version = await readVersion(database(), schoolScope(actor), versionId);
  if (version === null) return NOT_THERE;
  return can(actor.role, action, { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } }) ? version : NOT_YOURS;
}

/** Takes a signed assessment out of force at once, with a reason. */
export async function suspendAssessment(input: SuspendInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.suspend')) return refused(null, 'Only a safety officer suspends an assessment');
  return outcome(await suspendVersion(database(), actor, new Date(), input.versionId, input.reason), input.versionId);
}

export async function liftSuspension(input: SuspendInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.lift-suspension')) return refused(null, 'Only a safety officer lifts a suspension');
  return outcome(await liftSuspensionOf(database(), actor, new Date(), input.versionId, input.reason), input.versionId);
}

/** The officer has looked again at what spoke against a signed assessment. */
export async function settleReview(input: SettleReviewInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'assessment.settle-review')) return refused(null, 'Only a safety officer settles a review');
  return outcome(await settleReviewOf(database(), actor, new Date(), input), input.versionId);
}
