import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Icon } from '@/app/_components/ui/icon';
import type { Content } from '@/lib/content/model';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';

interface MatrixMovesProps { readonly risks: readonly RiskResult[]; readonly gradeWords: ScoreResult['matrix']['gradeWords']; readonly weights: Content['harmWeights'] }

/** Each risk's grade today and after the open actions, as a list. */
export function MatrixMoves({ risks, gradeWords, weights }: MatrixMovesProps) {
  const word = (grade: GradeOrNone): string | undefined => (grade === 'not applicable' ? undefined : gradeWords[grade]);
  return (
    <ol className="moves">
      {risks.map((risk) => (
        <li key={risk.id}>
          <span className="no">{risk.rank}</span>
          <span className="what">{risk.title}</span>
          <span className="ways">
            <GradeMark grade={risk.grade} word={word(risk.grade)} couldKill={riskCouldKill(risk, weights)} />
            {risk.plannedGrade === risk.grade ? null : <><Icon name="right" /><span className="vh">after the open actions:</span><GradeMark grade={risk.plannedGrade} word={word(risk.plannedGrade)} /></>}
          </span>
        </li>
      ))}
    </ol>
  );
}
