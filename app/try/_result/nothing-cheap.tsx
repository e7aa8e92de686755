import type { ActionResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';

interface NothingCheapProps {
  /** what could still be done, at least one */
  readonly actions: readonly ActionResult[];
  /** the largest effort that was searched, points */
  readonly most: number;
}

/** A line that never leaves the ground says nothing; words say what is left and what it costs. */
export function NothingCheap({ actions, most }: NothingCheapProps) {
  const useful = actions.filter((action) => action.harmReduction > 0);
  const least = Math.min(...useful.map((action) => action.effort));
  return (
    <p id="effort-words" className="after">
      <b>{most} points</b> of effort take away <b>0 %</b> of the harm, by this model, our judgement.{' '}
      {useful.length === 0 ? 'Nothing that is left to do would take any away.' : `The least of what would begins at ${rounded(least)} points.`}
    </p>
  );
}
