import type { Content } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { AssessmentDocument } from '@/lib/core/document';
import type { BestSet } from '@/lib/core/result';
import { bestSetResult } from '@/lib/core/risk/best-set-result';
import { drawPlan } from '@/lib/core/risk/draw-plan';
import { runDraws } from '@/lib/core/risk/draws';
import { riskSetup } from '@/lib/core/risk/risk-setup';

/** Draws that the range of a best set rests on. */
export const SET_DRAWS = 1000;

/**
 * The exact best set for one budget after another, for a slider of effort: the venue is made ready once.
 * The figures for the document's own budget are those of `score` with the same seed and as many draws.
 * @param draws 2 or more; `SET_DRAWS` to agree with `score`
 * @returns a function of the budget in effort points, 0 or more
 */
export function bestSetsOf(content: Content, document: AssessmentDocument, options: { readonly seed: number; readonly draws: number }): (budget: number) => BestSet {
  const venue = resolveVenue(content, document);
  const setup = riskSetup(venue, document);
  const totals = runDraws(drawPlan(setup, venue), options.draws, options.seed).total;
  return (budget) => bestSetResult(setup, budget, totals, options.seed);
}
