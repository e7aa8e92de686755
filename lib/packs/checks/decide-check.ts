import type { AuditEvent } from '@/lib/audit/event';
import { type Decided, refusedFor } from '../decided';
import type { Pack } from '../pack';
import { stateAfterCheck } from '../states/after-check';
import { type NewState, stateChanged } from '../states/new-state';
import { isHere } from '../states/pack-states';
import type { CheckPurpose, FoundInCheck } from './check-record';

export interface CheckDecision { readonly state: NewState | null }

/** Decides what a check that was made does to its pack. @param checkId under which it will be kept */
export function decideCheck(pack: Pack, checkId: string, { purpose, found }: { readonly purpose: CheckPurpose; readonly found: FoundInCheck }): Decided<CheckDecision> {
  if (!isHere(pack.state)) return refusedFor(null, 'This pack was handed over: it is no longer here to be checked');
  const state = stateAfterCheck(pack.state, found);
  const { verdict, fired } = found.result;
  const checked: AuditEvent = { kind: 'pack.checked', subjectId: pack.id, data: { label: pack.label, checkId, purpose, verdict, fired: fired.map(({ id }) => id) } };
  return { ok: true, change: { state }, events: state === null ? [checked] : [checked, stateChanged(pack, { ...state, checkId })] };
}
