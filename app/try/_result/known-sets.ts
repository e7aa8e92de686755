import type { BestSet } from '@/lib/core/result';

/**
 * The best sets that are known, by rising budget: those searched so far, and at the document's own budget the one
 * the command prints, with the range of all draws. It is there also where the search ended before it.
 */
export function knownSets(searched: readonly BestSet[], own: BestSet): readonly BestSet[] {
  return [...searched.filter((set) => set.budget !== own.budget), own].sort((one, other) => one.budget - other.budget);
}

/** The known budget that a move of the slider leads to: there may be a gap, and no key may get stuck at its edge. */
export function stepTo(known: readonly BestSet[], from: number, to: number): number {
  const budgets = known.map((set) => set.budget);
  const onward = to > from ? budgets.find((budget) => budget >= to) : budgets.findLast((budget) => budget <= to);
  return onward ?? from;
}
