import { memo } from 'react';
import { Ranking } from '@/app/_components/charts/ranking';
import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Icon } from '@/app/_components/ui/icon';
import { Section } from '@/app/_components/ui/section';
import type { Content } from '@/lib/content/model';
import type { RiskResult, ScoreResult } from '@/lib/core/result';
import { inHundredTeams } from '@/lib/wording/frequency';
import { rankReason } from '@/lib/wording/rank-reason';

interface RankingPartProps { readonly content: Content; readonly result: ScoreResult; /** where a risk is told in full */ readonly addressOfRisk: (riskId: string) => string }

/** Risks by harm, each with its grade today and after what is planned. */
export const RankingPart = memo(function RankingPart({ content, result, addressOfRisk }: RankingPartProps) {
  return (
    <Section id="ranking" title="Ranking" aside="by harm: how often × how bad">
      <Ranking
        risks={result.risks}
        gradeWords={result.matrix.gradeWords}
        weights={content.harmWeights}
        hrefOf={(risk) => addressOfRisk(risk.id)}
        noteOf={(risk) => <RankNote risk={risk} result={result} content={content} />}
      />
    </Section>
  );
});

interface RankNoteProps { readonly risk: RiskResult; readonly result: ScoreResult; readonly content: Content }

function RankNote({ risk, result, content }: RankNoteProps) {
  if (risk.grade === 'not applicable') return <>Nothing here is exposed to it.</>;
  const reason = rankReason(risk, result.risks, content.harmWeights);
  const moves = risk.plannedGrade !== risk.grade && risk.plannedGrade !== 'not applicable';
  return (
    <>
      {capital(inHundredTeams(risk.topFrequencyMean))}.
      {reason === null ? null : ` ${reason}`}
      {moves ? <span className="planned"><Icon name="right" /><span>once the planned actions are done: <GradeMark grade={risk.plannedGrade} word={result.matrix.gradeWords[risk.plannedGrade]} /></span></span> : null}
    </>
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
