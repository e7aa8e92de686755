import type { AuditEvent } from '@/lib/audit/event';
import type { IsolationCause } from '@/lib/packs/pack';
import { type NewState, stateChanged } from '@/lib/packs/states/new-state';
import { isHere } from '@/lib/packs/states/pack-states';
import { packOfRow } from './rows';
import { type Writing, writeState } from './write-pack';

/** Why packs are isolated together, as an incident does it. */
export interface IsolationReason { readonly reason: string; readonly cause: IsolationCause; readonly incidentId?: string }

/**
 * Isolates packs inside a transaction of the caller, who writes the events returned. A pack that is isolated already gets
 * the new cause besides; one that was handed over, or is not of this school, is left alone.
 */
export async function isolatePacks(writing: Writing, packIds: readonly string[], why: IsolationReason): Promise<readonly AuditEvent[]> {
  const rows = await writing.tx.pack.findMany({ where: { ...writing.scope, id: { in: [...packIds] } } });
  const events: AuditEvent[] = [];
  for (const pack of rows.map(packOfRow).filter(({ state }) => isHere(state))) {
    const state: NewState = { to: 'isolated', ...why };
    await writeState(writing, pack, state);
    events.push(stateChanged(pack, state));
  }
  return events;
}
