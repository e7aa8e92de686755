import { at } from '@/lib/core/at';
import type { Candidate } from './candidates';
import { countedUses, effectiveFailure } from './counted-uses';
import { failuresOf, type RiskSetup } from './risk-setup';

/** What a candidate does on one path: a factor of its own, or a member of a group whose best alone counts. */
export interface Effect {
  readonly path: number;
  /** slot of the group's standing on this path, −1 when the control stands alone */
  readonly slot: number;
  /** mean effective failure in place */
  readonly after: number;
  /** today's, for a control that stands alone */
  readonly before: number;
}

export interface PathEffects {
  /** by candidate */
  readonly effects: readonly (readonly Effect[])[];
  /** today's mean effective failure of the member that counts, by slot; 1 where none does */
  readonly standing: readonly number[];
}

/** Effects of all candidates on the frequencies of all paths, and what stands in each group today. */
export function pathEffects(setup: RiskSetup, candidates: readonly Candidate[]): PathEffects {
  const { compiled } = setup;
  const failure = failuresOf(compiled, setup.venue);
  const positionOf = new Map(candidates.map((candidate, position) => [candidate.index, position]));
  const effects: Effect[][] = candidates.map(() => []);
  const standing: number[] = [];
  const paths = compiled.scenarios.flatMap(({ branches }) => branches.map((branch) => branch.path));
  paths.forEach((uses, path) => {
    const slots = new Map<number, number>();
    for (const position of countedUses(uses, failure, compiled.controls)) {
      const use = uses[position];
      if (use === undefined || use.group < 0) continue;
      slots.set(use.group, standing.length);
      standing.push(effectiveFailure(use.reach, at(failure, use.control)));
    }
    for (const use of uses) {
      const position = positionOf.get(use.control);
      if (position === undefined) continue;
      effects[position]?.push({
        path,
        slot: slots.get(use.group) ?? -1,
        after: effectiveFailure(use.reach, compiled.failures.of(use.control, 'in place')),
        before: effectiveFailure(use.reach, at(failure, use.control)),
      });
    }
  });
  return { effects, standing };
}
