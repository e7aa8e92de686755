import { memo } from 'react';
import { RiskMatrix } from '@/app/_components/charts/risk-matrix';
import { Section } from '@/app/_components/ui/section';
import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { gradeRule, gradeWord } from '@/lib/wording/grades';

const GRADES = ['low', 'moderate', 'high', 'extreme'] as const;

/** Every risk's place in the matrix in use, and where the planned actions take it. */
export const MatrixPart = memo(function MatrixPart({ result, weights }: { readonly result: ScoreResult; readonly weights: Content['harmWeights'] }) {
  return (
    <Section id="matrix" title="Before and after" aside={result.matrix.title}>
      <RiskMatrix result={result} weights={weights} />
      <p className="small muted after">{GRADES.map((grade) => `${gradeWord(grade, result.matrix.gradeWords[grade])}: ${gradeRule(grade)}`).join(' ')}</p>
    </Section>
  );
});
