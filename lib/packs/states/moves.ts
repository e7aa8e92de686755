import type { ActionOfRole } from '@/lib/access/table';
import type { PackState } from './pack-states';

export interface Move {
  readonly from: PackState;
  readonly to: PackState;
  readonly action: Extract<ActionOfRole, `pack.${string}`>;
  /** the button */
  readonly verb: string;
}

/**
 * Every way from state to state that a person may take; a check may also isolate, retire or set to watch by itself.
 * Isolated packs come back by release alone. Handing over has its own form, since somebody receives the pack.
 */
export const MOVES: readonly Move[] = [
  { from: 'in-use', to: 'watch', action: 'pack.isolate', verb: 'Set to watch' },
  { from: 'in-use', to: 'isolated', action: 'pack.isolate', verb: 'Mark isolated' },
  { from: 'in-use', to: 'retired', action: 'pack.retire', verb: 'Retire' },
  { from: 'watch', to: 'in-use', action: 'pack.put-back', verb: 'Back in use' },
  { from: 'watch', to: 'isolated', action: 'pack.isolate', verb: 'Mark isolated' },
  { from: 'watch', to: 'retired', action: 'pack.retire', verb: 'Retire' },
  { from: 'retired', to: 'watch', action: 'pack.put-back', verb: 'Back to watch' },
  { from: 'retired', to: 'isolated', action: 'pack.isolate', verb: 'Mark isolated' },
  { from: 'retired', to: 'handed-over', action: 'pack.hand-over', verb: 'Handed over' },
  { from: 'isolated', to: 'watch', action: 'pack.release', verb: 'Release to watch' },
  { from: 'isolated', to: 'handed-over', action: 'pack.hand-over', verb: 'Handed over' },
];

export function moveBetween(from: PackState, to: PackState): Move | null {
  return MOVES.find((move) => move.from === from && move.to === to) ?? null;
}
