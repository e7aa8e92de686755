import { type Candidate, inPlace } from '@/lib/core/risk/candidates';
import { evaluateClosed } from '@/lib/core/risk/closed-form';
import type { RiskSetup } from '@/lib/core/risk/risk-setup';

/** Every subset within the budget, by the rule of amendment A26: least harm, then less effort, then ids in order. */
export function bestByTryingAll(setup: RiskSetup, budget: number, candidates: readonly Candidate[]): { readonly controls: readonly string[]; readonly harm: number } {
  const today = evaluateClosed(setup, setup.venue).totalHarm;
  let best = { controls: [] as readonly string[], harm: today, effort: 0 };
  for (let mask = 1; mask < 2 ** candidates.length; mask += 1) {
    const chosen = candidates.filter((_, index) => (mask >> index) % 2 === 1);
    const effort = chosen.reduce((sum, one) => sum + one.effort, 0);
    if (effort > budget) continue;
    const controls = chosen.map((one) => one.control).sort();
    const harm = evaluateClosed(setup, inPlace(setup.venue, controls)).totalHarm;
    const equal = Math.abs(harm - best.harm) <= today * 1e-9;
    const simpler = effort < best.effort || (effort === best.effort && controls.join(' ') < best.controls.join(' '));
    if (equal ? simpler : harm < best.harm) best = { controls, harm, effort };
  }
  return { controls: best.controls, harm: best.harm };
}

/** Candidates spread over the list, so that groups and containers come up. */
export const spreadOver = (candidates: readonly Candidate[], count: number, from: number): readonly Candidate[] =>
  Array.from({ length: Math.min(count, candidates.length) }, (_, index) => candidates[(from + index * 7) % candidates.length]).filter((one, index, all): one is Candidate => one !== undefined && all.indexOf(one) === index);
