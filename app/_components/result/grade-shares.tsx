import { GradeMark } from '@/app/_components/ui/grade-mark';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { percent } from '@/lib/wording/numbers';

const ORDER: readonly GradeOrNone[] = ['extreme', 'high', 'moderate', 'low', 'not applicable'];

interface GradeSharesProps { readonly risk: RiskResult; readonly gradeWords: ScoreResult['matrix']['gradeWords'] }

/** In how many of the draws the risk falls into each grade: how firmly the grade stands. */
export function GradeShares({ risk, gradeWords }: GradeSharesProps) {
  return (
    <ul className="shares">
      {ORDER.filter((grade) => risk.gradeShares[grade] > 0).map((grade) => (
        <li key={grade}><GradeMark grade={grade} word={grade === 'not applicable' ? undefined : gradeWords[grade]} /> <span className="num">{percent(risk.gradeShares[grade])}</span></li>
      ))}
    </ul>
  );
}
