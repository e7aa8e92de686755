import type { ReactNode } from 'react';
import { GradeMark } from '@/app/_components/ui/grade-mark';
import type { Content } from '@/lib/content/model';
import type { Grade, RiskResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { onceInWords, onceRangeWords } from '@/lib/wording/frequency';
import { percent } from '@/lib/wording/numbers';
import { FrequencyRuler, FrequencyScale } from './frequency-ruler';

interface RankingProps {
  readonly risks: readonly RiskResult[];
  /** the matrix's own words */
  readonly gradeWords: Readonly<Record<Grade, string>>;
  /** harm points of each class: what could kill says so */
  readonly weights: Content['harmWeights'];
  /** where a risk is told in full */
  readonly hrefOf: (risk: RiskResult) => string;
  /** a line under a risk, e.g. why it stands above one with a worse grade */
  readonly noteOf?: (risk: RiskResult) => ReactNode;
}

/** Risks by harm, each with its grade and how often on a ruler. */
export function Ranking({ risks, gradeWords, weights, hrefOf, noteOf }: RankingProps) {
  return (
    <>
      <FrequencyScale />
      <ol className="rank">
        {risks.map((risk) => <RankRow key={risk.id} risk={risk} gradeWords={gradeWords} weights={weights} href={hrefOf(risk)} note={noteOf?.(risk) ?? null} />)}
      </ol>
      <p className="legend-row" aria-hidden="true">
        <span><svg className="ic plumb" viewBox="0 0 10 21"><path d="M5 21 0 12V0h10v12z" fill="currentColor" /></svg>how often on average</span>
        <span><svg className="swatch" viewBox="0 0 24 13"><rect className="r-grain-wash" width="24" height="13" /><rect fill="url(#sand)" width="24" height="13" /></svg>sand: nine draws in ten fall here</span>
      </p>
    </>
  );
}

interface RankRowProps { readonly risk: RiskResult; readonly gradeWords: RankingProps['gradeWords']; readonly weights: RankingProps['weights']; readonly href: string; readonly note: ReactNode }

function RankRow({ risk, gradeWords, weights, href, note }: RankRowProps) {
  const applies = risk.grade !== 'not applicable';
  return (
    <li>
      <span className="no" aria-hidden="true">{risk.rank}</span>
      <h3><a href={href}>{risk.title}</a></h3>
      <span className="gr"><GradeMark grade={risk.grade} word={risk.grade === 'not applicable' ? undefined : gradeWords[risk.grade]} couldKill={riskCouldKill(risk, weights)} />{risk.grade === 'not applicable' ? null : <span className="small muted share">this grade in {percent(risk.gradeShares[risk.grade])} of draws</span>}</span>
      <div className="rl">{applies ? <FrequencyRuler mean={risk.topFrequencyMean} range={risk.frequency} /> : null}</div>
      <p className="fr">{onceInWords(risk.topFrequencyMean)}{applies ? <><br /><span className="small">{onceRangeWords(risk.frequency)}</span></> : null}</p>
      {note === null ? null : <div className="under small muted">{note}</div>}
    </li>
  );
}
