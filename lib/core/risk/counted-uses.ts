import type { Control } from '@/lib/content/model';
import { at } from '@/lib/core/at';
import type { CompiledContent, CompiledScenario, CompiledUse } from './compiled-content';

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
  const counted: number[] = [];
  for (let position = 0; position < uses.length; position += 1) if (isBestOfGroup(uses, position, failure, controls)) counted.push(position);
  return counted;
}

function isBestOfGroup(uses: readonly CompiledUse[], position: number, failure: ArrayLike<number>, controls: readonly Control[]): boolean {
  const use = uses[position] as CompiledUse;
  if (use.group < 0) return true;
  const mine = effectiveFailure(use.reach, failure[use.control] as number);
  for (let other = 0; other < uses.length; other += 1) {
    const rival = uses[other] as CompiledUse;
    if (other === position || rival.group !== use.group) continue;
    const its = effectiveFailure(rival.reach, failure[rival.control] as number);
    if (its < mine || (its === mine && idOf(controls, rival) < idOf(controls, use))) return false;
  }
  return true;
}

const idOf = (controls: readonly Control[], use: CompiledUse): string => at(controls, use.control).id;

/** Positions that count for the top event and on each path of a scenario. */
export interface CountedScenario { readonly top: readonly number[]; readonly paths: readonly (readonly number[])[] }

/** What counts in every scenario: chosen once for the states of a venue, not anew in each draw (amendment A7). */
export function countedScenarios(compiled: CompiledContent, failure: ArrayLike<number>): readonly CountedScenario[] {
  return compiled.scenarios.map((scenario) => countedScenario(scenario, failure, compiled.controls));
}

function countedScenario({ preventive, branches }: CompiledScenario, failure: ArrayLike<number>, controls: readonly Control[]): CountedScenario {
  return { top: countedUses(preventive, failure, controls), paths: branches.map(({ path }) => countedUses(path, failure, controls)) };
}

/** Product of the effective failures of the uses that count. */
export function pathProduct(uses: readonly CompiledUse[], counted: readonly number[], failure: ArrayLike<number>): number {
  let product = 1;
  for (const position of counted) {
    const use = uses[position] as CompiledUse;
    product *= effectiveFailure(use.reach, failure[use.control] as number);
  }
  return product;
}
