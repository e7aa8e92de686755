import type { CheckRecord } from './checks/check-record';
import type { Pack, StateChange } from './pack';

/** Places of the content where an isolated pack may stay; anywhere else a person has to act. */
export const SETTLED_PLACES: readonly string[] = ['outdoor-spot', 'fire-service'];

/** A pack with all that was seen of it and done with it, newest first. */
export interface PackHistory {
  readonly pack: Pack;
  readonly checks: readonly CheckRecord[];
  readonly changes: readonly StateChange[];
  /** charges of its whole life; null when nobody knows those before the register */
  readonly charges: number | null;
}

/** When the pack went into isolation, and all changes since; null when it is not isolated. */
export function isolationOf({ pack, changes }: Pick<PackHistory, 'pack' | 'changes'>): { readonly since: Date; readonly changes: readonly StateChange[] } | null {
  if (pack.state !== 'isolated') return null;
  const began = changes.findIndex(({ from, to }) => to === 'isolated' && from !== 'isolated');
  const own = began === -1 ? changes : changes.slice(0, began + 1);
  return { since: own.at(-1)?.at ?? pack.stateSince, changes: own };
}

/** Where an isolated pack is, as somebody last said; null until somebody has. */
export function placeOfIsolated(history: Pick<PackHistory, 'pack' | 'changes'>): Pick<StateChange, 'placeNow' | 'placeNote' | 'inSand' | 'at'> | null {
  return isolationOf(history)?.changes.find(({ placeNow }) => placeNow !== null) ?? null;
}

/** Marked isolated, and nobody has said yet where the pack itself is: it may still lie among the others. */
export function mustBeIsolatedNow(history: Pick<PackHistory, 'pack' | 'changes'>): boolean {
  return history.pack.state === 'isolated' && placeOfIsolated(history) === null;
}

/** Why it is isolated: the gravest of the causes given since; one that only lay nearby may show a sign later. */
export function causeOfIsolation(history: Pick<PackHistory, 'pack' | 'changes'>): StateChange['cause'] {
  const causes = (isolationOf(history)?.changes ?? []).flatMap(({ cause }) => (cause === null ? [] : [cause]));
  return causes.find((cause) => cause !== 'nearby') ?? causes[0] ?? null;
}
