import type { ScoreResult } from '@/lib/core/result';

/** Effort points that a team can think of spending in a term; beyond it the exact search takes minutes. */
const MOST = 24;

/** Budgets of effort for the slider: every whole point until everything can be done, at most to `MOST`. */
export function budgetsFor(result: Pick<ScoreResult, 'actions'>): readonly number[] {
  const everything = result.actions.reduce((sum, action) => sum + action.effort, 0);
  const most = Math.min(MOST, Math.ceil(everything));
  return Array.from({ length: most + 1 }, (_, points) => points);
}
