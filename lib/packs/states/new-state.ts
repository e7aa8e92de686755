import type { AuditEvent } from '@/lib/audit/event';
import type { IsolationCause, Pack } from '../pack';
import type { PackState } from './pack-states';

/** A state a pack is to get, with why. */
export interface NewState {
  readonly to: PackState;
  readonly reason: string;
  readonly cause: IsolationCause | null;
  readonly checkId?: string;
  readonly incidentId?: string;
}

/** A change of state by hand, and who received the pack where it left. */
export interface MoveChange {
  readonly state: NewState;
  readonly handOver: { readonly collectedBy: string; readonly receiverName: string } | null;
}

/** The entry of the log for a change of state. */
export function stateChanged(pack: Pick<Pack, 'id' | 'label' | 'state'>, state: NewState): AuditEvent {
  const { to, reason, cause, checkId = null, incidentId = null } = state;
  return { kind: 'pack.state-changed', subjectId: pack.id, data: { label: pack.label, from: pack.state, to, reason, cause, checkId, incidentId } };
}
