import type { Content } from '@/lib/content/model';
import type { BranchResult, RiskResult } from '@/lib/core/result';

type End = Pick<BranchResult, 'severity' | 'expectedWeight' | 'grade'>;
type Weights = Content['harmWeights'];

/** What stands beside the grade of such an end: a low grade of it says rare, never mild. */
export const COULD_KILL = 'could kill';

/**
 * Whether an end of a risk could kill, whatever its grade: it stands in class 5 at the middle of all yields,
 * or so many of its fires do that its mean weight is above that of class 4. A mean above a class is proof
 * that some fires are in the next; a grade, taken at the middle, does not show them. Our judgement.
 * @param weights harm points of each severity class, of the edition in use
 */
export function endCouldKill(end: End, weights: Weights): boolean {
  return end.grade !== 'not applicable' && (end.severity === 5 || end.expectedWeight > weights['4']);
}

/** Whether any end of a risk could kill; what nothing is exposed to cannot. */
export function riskCouldKill(risk: Pick<RiskResult, 'branches'>, weights: Weights): boolean {
  return risk.branches.some((branch) => endCouldKill(branch, weights));
}
