'use client';

import { memo } from 'react';
import { RiskMatrix } from '@/app/_components/charts/risk-matrix';
import { Section } from '@/app/_components/ui/section';
import type { ScoreResult } from '@/lib/core/result';
import { gradeRule, gradeWord } from '@/lib/wording/grades';
import { useContent } from '../_state/use-content';

const GRADES = ['low', 'moderate', 'high', 'extreme'] as const;

/** Every risk's place in the matrix in use, and where the planned actions take it. */
export const MatrixPart = memo(function MatrixPart({ result }: { readonly result: ScoreResult }) {
  const { harmWeights } = useContent();
  return (
    <Section id="matrix" title="Before and after" aside={result.matrix.title}>
      <RiskMatrix result={result} weights={harmWeights} />
      <p className="small muted after">{GRADES.map((grade) => `${gradeWord(grade, result.matrix.gradeWords[grade])}: ${gradeRule(grade)}`).join(' ')}</p>
    </Section>
  );
});
