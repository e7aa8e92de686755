'use client';

import { useMemo } from 'react';
import { AssumptionsPart } from '@/app/_components/result/assumptions-part';
import { DoubtPart } from '@/app/_components/result/doubt-part';
import { guidanceOfRoom } from '@/app/_components/result/guidance-of-room';
import { HeatPart } from '@/app/_components/result/heat-part';
import { MatrixPart } from '@/app/_components/result/matrix-part';
import { RankingPart } from '@/app/_components/result/ranking-part';
import { SMOKE_GUIDANCE } from '@/app/_components/result/smoke-guidance';
import { SmokePart } from '@/app/_components/result/smoke-part';
import { StopsPart } from '@/app/_components/result/stops-part';
import { surroundingsOf } from '@/app/_components/result/surroundings';
import { smokeThresholds } from '@/lib/charts/smoke-points';
import type { ScoreResult } from '@/lib/core/result';
import type { ScoreState } from '../_score/score-desk';
import type { EditPlan } from '../_state/edit-plan';
import { useContent } from '../_state/use-content';
import { documentParts, type WholeDocument } from '../_state/whole-document';
import { addressOfQuestion, addressOfRisk } from './anchors';
import { FirstPart } from './first-part';
import { RisksPart } from './risks-part';

interface RoomResultProps { readonly result: ScoreResult; readonly score: ScoreState; readonly whole: WholeDocument; readonly plan: EditPlan }

/** Everything that was worked out, the verdict's reasons first. */
export function RoomResult({ result, score, whole, plan }: RoomResultProps) {
  const content = useContent();
  const scored = score.stage === 'scored' ? score : null;
  const parts = useMemo(() => documentParts(whole), [whole]);
  const thresholds = useMemo(() => smokeThresholds(content), [content]);
  const guidance = useMemo(() => guidanceOfRoom(content, parts, SMOKE_GUIDANCE), [content, parts]);
  const around = useMemo(() => surroundingsOf(parts), [parts]);
  return (
    <div aria-busy={scored === null} data-stage={score.stage}>
      <StopsPart content={content} stops={result.stops} addressOf={addressOfQuestion} />
      <RankingPart content={content} result={result} addressOfRisk={addressOfRisk} />
      <MatrixPart result={result} weights={content.harmWeights} />
      <FirstPart result={result} sets={scored?.sets ?? []} complete={scored?.setsComplete ?? false} plan={plan} />
      <RisksPart result={result} />
      <SmokePart cases={result.smoke} thresholds={thresholds} guidance={guidance} />
      <HeatPart heats={result.heat} around={around} />
      <DoubtPart content={content} result={result} addressOf={addressOfQuestion} />
      <AssumptionsPart content={content} result={result} parts={parts} addressOf={addressOfQuestion} />
    </div>
  );
}
