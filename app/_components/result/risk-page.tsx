import { BowTie } from '@/app/_components/charts/bow-tie';
import { GradeMark } from '@/app/_components/ui/grade-mark';
import { ScientificNumber } from '@/app/_components/ui/scientific-number';
import type { Content } from '@/lib/content/model';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { frequencyWords, inHundredTeams, onceInWords } from '@/lib/wording/frequency';
import { percent, rounded } from '@/lib/wording/numbers';
import { inPlaceFailures } from './in-place-failures';
import { BranchesTable } from './branches-table';
import { GradeShares } from './grade-shares';
import { LearningWords } from './learning-words';

interface RiskPageProps { readonly content: Content; readonly risk: RiskResult; readonly result: ScoreResult; /** of its headings: 3 as a part of a page, 2 on a page of its own */ readonly level?: 2 | 3 }

/** One risk in full: what leads to it and what follows, its ends, how firmly its grade stands. */
export function RiskPage({ content, risk, result, level = 3 }: RiskPageProps) {
  const Heading = level === 2 ? 'h2' : 'h3';
  const words = result.matrix.gradeWords;
  const wordOf = (grade: GradeOrNone): string | undefined => (grade === 'not applicable' ? undefined : words[grade]);
  return (
    <div className="risk-page">
      <p>{risk.description}</p>
      <p className="lead">{sentence(frequencyWords(risk.topFrequencyMean, risk.frequency))} {sentence(inHundredTeams(risk.topFrequencyMean))}</p>
      <ul className="grade-three">
        <li><GradeMark grade={risk.grade} word={wordOf(risk.grade)} couldKill={riskCouldKill(risk, content.harmWeights)} size="big" /> <span className="muted">today</span></li>
        <li><GradeMark grade={risk.plannedGrade} word={wordOf(risk.plannedGrade)} /> <span className="muted">once the planned actions are done</span></li>
        <li><GradeMark grade={risk.inherentGrade} word={wordOf(risk.inherentGrade)} /> <span className="muted">with no control at all</span></li>
      </ul>
      <Heading>What leads to it, what follows</Heading>
      <BowTie risk={risk} first={result.bestSet.controls} inPlaceFailure={inPlaceFailures(content)} weights={content.harmWeights} />
      <Heading>What it does</Heading>
      <BranchesTable risk={risk} gradeWords={words} weights={content.harmWeights} />
      <Heading>How firmly the grade stands</Heading>
      <p className="small muted">Share of {rounded(result.draws)} draws in each grade. It ranks first in {percent(risk.rankFirstShare)} of them.</p>
      <GradeShares risk={risk} gradeWords={words} />
      {risk.learning === null ? null : <LearningWords learning={risk.learning} unit={risk.exposureTitle} level={level} />}
      <p className="small muted">
        <ScientificNumber value={risk.topFrequencyMean} /> a season (<ScientificNumber value={risk.frequency.p05} /> to <ScientificNumber value={risk.frequency.p95} />), from {rounded(risk.exposure)} a season of: {risk.exposureTitle}.
        {' '}Without any control: {onceInWords(risk.inherentFrequency)}. Harm {rounded(risk.harmMean)} points a season, {rounded(risk.plannedHarm)} after what is planned.
      </p>
    </div>
  );
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
