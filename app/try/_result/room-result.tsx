'use client';

import type { ScoreResult } from '@/lib/core/result';
import type { ScoreState } from '../_score/score-desk';
import type { EditPlan } from '../_state/edit-plan';
import type { WholeDocument } from '../_state/whole-document';
import { AssumptionsPart } from './assumptions-part';
import { DoubtPart } from './doubt-part';
import { FirstPart } from './first-part';
import { HeatPart } from './heat-part';
import { MatrixPart } from './matrix-part';
import { RankingPart } from './ranking-part';
import { RisksPart } from './risks-part';
import { SmokePart } from './smoke-part';
import { StopsPart } from './stops-part';

interface RoomResultProps { readonly result: ScoreResult; readonly score: ScoreState; readonly whole: WholeDocument; readonly plan: EditPlan }

/** Everything that was worked out, the verdict's reasons first. */
export function RoomResult({ result, score, whole, plan }: RoomResultProps) {
  const scored = score.stage === 'scored' ? score : null;
  return (
    <div aria-busy={scored === null} data-stage={score.stage}>
      <StopsPart stops={result.stops} />
      <RankingPart result={result} />
      <MatrixPart result={result} />
      <FirstPart result={result} sets={scored?.sets ?? []} complete={scored?.setsComplete ?? false} plan={plan} />
      <RisksPart result={result} />
      <SmokePart result={result} whole={whole} />
      <HeatPart result={result} whole={whole} />
      <DoubtPart result={result} />
      <AssumptionsPart result={result} whole={whole} />
    </div>
  );
}
