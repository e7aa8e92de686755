import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { percent, percentRange, rounded } from '@/lib/wording/numbers';
import { resultIn, type ScoreState } from '../_score/score-desk';
import { type Verdict, verdictOf } from '@/lib/wording/verdict';

/** The verdict as soon as closed values are there; what could kill follows with the full result. */
export function verdictFrom(score: ScoreState, weights: Content['harmWeights']): Verdict | null {
  if (score.stage === 'closed') return verdictOf({ ...score.quick, deadly: null });
  const result = resultIn(score);
  return result === null ? null : verdictOf({ ...result, deadly: result.risks.filter((risk) => riskCouldKill(risk, weights)).length });
}

/** What stands behind the verdict, and what the least effort brings. */
export function leadOf(verdict: Verdict, result: ScoreResult | null): string {
  if (result === null || result.bestSet.controls.length === 0) return verdict.why;
  const { effort, cut, cutInterval } = result.bestSet;
  return `${verdict.why} ${rounded(effort)} points of effort would take away ${percent(cut)} of the harm (${percentRange(cutInterval.p05, cutInterval.p95)}), by this model, our judgement.`;
}
