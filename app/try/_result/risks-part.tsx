'use client';

import { memo, useCallback } from 'react';
import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Section } from '@/app/_components/ui/section';
import type { RiskResult, ScoreResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { useContent } from '../_state/use-content';
import { useOpenedByHash } from '../_state/use-opened-by-hash';
import { riskAnchor } from './anchors';
import { RiskPage } from '@/app/_components/result/risk-page';

/** A part for each risk; it opens by its link and is drawn only then. */
export const RisksPart = memo(function RisksPart({ result }: { readonly result: ScoreResult }) {
  return (
    <Section id="risks" title="Each risk by itself">
      <div className="parts">{result.risks.map((risk) => <RiskPart key={risk.id} risk={risk} result={result} />)}</div>
    </Section>
  );
});

function RiskPart({ risk, result }: { readonly risk: RiskResult; readonly result: ScoreResult }) {
  const content = useContent();
  const anchor = riskAnchor(risk.id);
  const owns = useCallback((asked: string) => asked === anchor, [anchor]);
  const { open, setOpen } = useOpenedByHash(owns);
  return (
    <details className="part" id={anchor} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="part-title">{risk.rank} {risk.title}</span>
        <GradeMark grade={risk.grade} word={risk.grade === 'not applicable' ? undefined : result.matrix.gradeWords[risk.grade]} couldKill={riskCouldKill(risk, content.harmWeights)} />
      </summary>
      {open ? <RiskPage content={content} risk={risk} result={result} /> : null}
    </details>
  );
}
