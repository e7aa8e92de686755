import { z } from 'zod';
import { can } from '@/lib/access/can';
import type { AuditEvent } from '@/lib/audit/event';
import type { PackLimits } from '@/lib/content/model';
import { line, oneOf, optionalLine } from '@/lib/forms/fields';
import { type Decided, refusedFor } from '../decided';
import type { PackHistory } from '../pack-history';
import { ISOLATION_CAUSES } from '../pack';
import { moveBetween } from './moves';
import { type MoveChange, type NewState, stateChanged } from './new-state';
import { releasePack } from './release-pack';
import { PACK_STATES, stateWords } from './pack-states';

/** What is asked when somebody changes the state of a pack by hand. */
export const MovePackSchema = z.object({
  packId: line('Choose a pack'),
  to: oneOf(PACK_STATES, 'Choose the new state'),
  reason: line('Write the reason; others have to understand it later', 400),
  cause: oneOf(['', ...ISOLATION_CAUSES], 'Choose why it is isolated').optional(),
  /** only for handing over */
  collectedBy: optionalLine(),
  receiverName: optionalLine(),
});
export type MovePack = z.output<typeof MovePackSchema>;

/** Decides about a change of state by hand: whether there is such a way, whether this role may take it, and what it asks. */
export function movePack(limits: PackLimits, history: PackHistory, command: MovePack, role: string): Decided<MoveChange> {
  const { pack } = history;
  const move = moveBetween(pack.state, command.to);
  if (move === null) return refusedFor(null, `A pack that is ${stateWords(pack.state)} cannot become ${stateWords(command.to)}`);
  if (!can(role, move.action)) return refusedFor(null, 'Your role does not go so far. Ask the safety officer');
  if (move.action === 'pack.release') return releasePack(limits, history, command.reason, role);
  if (move.action === 'pack.hand-over') return handOver(history, command);
  const against = move.from === 'watch' && move.to === 'in-use' ? againstPutBack(history) : null;
  if (against !== null) return refusedFor('to', against);
  const cause = command.cause === undefined || command.cause === '' ? null : command.cause;
  if (command.to === 'isolated' && cause === null) return refusedFor('cause', 'Say whether it showed a sign itself, or only lay near another');
  return decided(history, { to: command.to, reason: command.reason, cause: command.to === 'isolated' ? cause : null });
}

/** Back in use only by what somebody saw: the last check, made while it was on watch, found no sign. */
function againstPutBack({ pack, checks }: PackHistory): string | null {
  const last = checks[0];
  if (last === undefined || last.at.getTime() < pack.stateSince.getTime()) return 'Check it first: only a check made since then that finds no sign puts it in use again';
  return last.result.verdict === 'fit' ? null : 'The last check did not come out as fit, so it stays on watch';
}

function handOver(history: PackHistory, { reason, collectedBy, receiverName }: MovePack): Decided<MoveChange> {
  if (collectedBy === null) return refusedFor('collectedBy', 'Write which collection point or carrier took it');
  if (receiverName === null) return refusedFor('receiverName', 'Write the name of the person who received it');
  const state: NewState = { to: 'handed-over', reason, cause: null };
  const handed: AuditEvent = { kind: 'packs.handed-over', subjectId: history.pack.id, data: { labels: [history.pack.label], collectedBy, receiver: receiverName } };
  return { ok: true, change: { state, handOver: { collectedBy, receiverName } }, events: [stateChanged(history.pack, state), handed] };
}

function decided({ pack }: PackHistory, state: NewState): Decided<MoveChange> {
  return { ok: true, change: { state, handOver: null }, events: [stateChanged(pack, state)] };
}
