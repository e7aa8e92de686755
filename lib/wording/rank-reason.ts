import type { Content } from '@/lib/content/model';
import type { GradeOrNone, RiskResult } from '@/lib/core/result';

type HarmWeights = Content['harmWeights'];

const HEIGHT: Readonly<Record<GradeOrNone, number>> = { 'not applicable': 0, low: 1, moderate: 2, high: 3, extreme: 4 };

/** Below this share of a risk's harm, its deciding end is not what puts it where it is. */
const MOST_OF_IT = 0.6;
/** From this ratio of expected to middle weight on, fierce fires are what puts a risk where it is. */
const FIERCER = 1.5;

/**
 * Why a risk stands above one with a worse grade, in words, or null when grades and order agree. Order
 * goes by harm over all ends and all strengths of fire; a grade looks at one end at its middle.
 * @param risks in rank order
 * @param weights harm points of each severity class
 */
export function rankReason(risk: RiskResult, risks: readonly RiskResult[], weights: HarmWeights): string | null {
  const passed = risks.filter((other) => other.rank > risk.rank && HEIGHT[other.grade] > HEIGHT[risk.grade]);
  if (passed.length === 0) return null;
  const above = passed.length === 1 ? 'a risk with a worse grade' : `${passed.length} risks with a worse grade`;
  return `Ranked by harm, how often × how bad, so it stands above ${above}: ${causeOf(risk, weights)}`;
}

function causeOf(risk: RiskResult, weights: HarmWeights): string {
  const deciding = risk.branches.find((branch) => branch.id === risk.decidedBy);
  if (deciding === undefined || deciding.harm < MOST_OF_IT * risk.harmMean) return 'harm adds up all its ends, the grade looks at one.';
  if (deciding.expectedWeight > FIERCER * weights[deciding.severity]) return 'harm counts fierce fires too, the grade takes the middle.';
  return 'one step of the grade spans ten times in how often.';
}

