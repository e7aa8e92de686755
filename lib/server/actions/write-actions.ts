import 'server-only';
import { can } from '@/lib/access/can';
import type { ActionNoteInput, AddActionInput, ChangeActionInput } from '@/lib/assessments/action-input';
import { addAction as write, changeAction as rewrite, closeActionOf, openActionAgain, readAction } from '@/lib/db/assessments/actions';
import type { NotDone } from '@/lib/db/assessments/not-done';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

const NOT_YOURS = 'Only an organiser, a safety officer or whoever is to do it closes an action';

function outcome(done: { readonly ok: true; readonly id: string } | NotDone): Outcome {
  return done.ok ? { ok: true, then: `/actions/${done.id}` } : refused(null, done.why);
}

/** Makes an action of a suggestion, of a stop condition, or of what somebody writes. */
export async function addAction(input: AddActionInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'action.add')) return refused(null, 'Your role does not add actions');
  const done = await write(database(), actor, new Date(), input);
  return done.ok ? { ok: true, then: `/assessments/${input.versionId}/result#actions` } : refused(null, done.why);
}

export async function changeAction(input: ChangeActionInput, actor: Actor): Promise<Outcome> {
  if (!can(actor.role, 'action.change')) return refused(null, 'Your role does not change actions');
  return outcome(await rewrite(database(), actor, new Date(), input));
}

/** Done, with what was done; or dropped, with why. */
export async function closeAction(to: 'done' | 'dropped', { actionId, note }: ActionNoteInput, actor: Actor): Promise<Outcome> {
  const refusal = await whyNotClose(actor, actionId);
  return refusal === null ? outcome(await closeActionOf(database(), actor, new Date(), actionId, to, note)) : refused(null, refusal);
}

export async function reopenAction({ actionId, note }: ActionNoteInput, actor: Actor): Promise<Outcome> {
  const refusal = await whyNotClose(actor, actionId);
  return refusal === null ? outcome(await openActionAgain(database(), actor, new Date(), actionId, note)) : refused(null, refusal);
}

async function whyNotClose(actor: Actor, actionId: string): Promise<string | null> {
  const action = await readAction(database(), schoolScope(actor), actionId);
  if (action === null) return 'This action is not there';
  return can(actor.role, 'action.close', { actor, on: { schoolId: actor.schoolId, byId: action.ownerId } }) ? null : NOT_YOURS;
}
