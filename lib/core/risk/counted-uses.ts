import type { Control } from '@/lib/content/model';
import type { CompiledUse } from './compiled-content';

/**
 * Effective failure of one use: the control can act on the share `reach` of causes or cases (amendment A6).
 * @param meanFailure 0 to 1
 * @returns 0 to 1
 */
export const effectiveFailure = (reach: number, meanFailure: number): number => 1 - reach * (1 - meanFailure);

/**
 * The uses of a path that count: all that stand alone, and of each group the one with the lowest mean
 * effective failure, ties by id (amendment A7). Controls that rest on the same person or thing fail together.
 * @param failure E[X] of every control, by index
 * @returns positions in `uses`, rising
 */
export function countedUses(uses: readonly CompiledUse[], failure: ArrayLike<number>, controls: readonly Control[]): readonly number[] {
  const bestOfGroup = new Map<number, number>();
  uses.forEach((use, position) => {
    if (use.group < 0) return;
    const best = bestOfGroup.get(use.group);
    if (best === undefined || beats(use, uses[best], failure, controls)) bestOfGroup.set(use.group, position);
  });
  return uses.flatMap((use, position) => (use.group < 0 || bestOfGroup.get(use.group) === position ? [position] : []));
}

function beats(use: CompiledUse, other: CompiledUse | undefined, failure: ArrayLike<number>, controls: readonly Control[]): boolean {
  if (other === undefined) return true;
  const mine = effectiveFailure(use.reach, failure[use.control] ?? 1);
  const its = effectiveFailure(other.reach, failure[other.control] ?? 1);
  return mine < its || (mine === its && (controls[use.control]?.id ?? '') < (controls[other.control]?.id ?? ''));
}

/** Product of the effective failures of the uses that count. */
export function pathProduct(uses: readonly CompiledUse[], failure: ArrayLike<number>, controls: readonly Control[]): number {
  let product = 1;
  for (const position of countedUses(uses, failure, controls)) {
    const use = uses[position];
    if (use !== undefined) product *= effectiveFailure(use.reach, failure[use.control] ?? 1);
  }
  return product;
}
