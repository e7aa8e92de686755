import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Icon } from '@/app/_components/ui/icon';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';

interface MatrixMovesProps { readonly risks: readonly RiskResult[]; readonly gradeWords: ScoreResult['matrix']['gradeWords'] }

/** Each risk's grade today and after the open actions, as a list. */
export function MatrixMoves({ risks, gradeWords }: MatrixMovesProps) {
  const word = (grade: GradeOrNone): string | undefined => (grade === 'not applicable' ? undefined : gradeWords[grade]);
  return (
    <ol className="moves">
      {risks.map((risk) => (
        <li key={risk.id}>
          <span className="no">{risk.rank}</span>
          <span className="what">{risk.title}</span>
          <span className="ways">
            <GradeMark grade={risk.grade} word={word(risk.grade)} severity={risk.severity} />
            {risk.plannedGrade === risk.grade ? null : <><Icon name="right" /><span className="vh">after the open actions:</span><GradeMark grade={risk.plannedGrade} word={word(risk.plannedGrade)} /></>}
          </span>
        </li>
      ))}
    </ol>
  );
}
