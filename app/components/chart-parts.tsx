'use client';

import { useState } from 'react';
import { BowTie } from '@/app/_components/charts/bow-tie';
import { EffortCurve } from '@/app/_components/charts/effort-curve';
import { HeatDistances } from '@/app/_components/charts/heat-distances';
import { Ranking } from '@/app/_components/charts/ranking';
import { RiskMatrix } from '@/app/_components/charts/risk-matrix';
import { SmokeCurve } from '@/app/_components/charts/smoke-curve';
import { Tornado } from '@/app/_components/charts/tornado';
import { GuidanceText } from '@/app/_components/ui/guidance-text';
import { Section } from '@/app/_components/ui/section';
import { smokeThresholds } from '@/lib/charts/smoke-points';
import { fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidance2 } from '@/lib/content/guidance-2';
import { guidanceTogether } from '@/lib/content/guidance-together';
import { meanFailure } from '@/lib/core/risk/mean-failure';
import type { sampleRoom } from './sample';

/** The charts, drawn from one of the example rooms as the engine scores it. */
export function ChartParts({ room: { content, result, sets } }: { readonly room: ReturnType<typeof sampleRoom> }) {
  const [budget, setBudget] = useState(6);
  const inPlaceFailure = Object.fromEntries(content.controls.map((control) => [control.id, meanFailure(control, 'in place')]));
  const titleOf = (id: string): string => content.controls.find((control) => control.id === id)?.title ?? id;
  return (
    <>
      <Section id="charts" title="Ranking" aside={result.title}>
        <Ranking risks={result.risks.slice(0, 7)} gradeWords={result.matrix.gradeWords} weights={content.harmWeights} hrefOf={(risk) => `#tie-${risk.id}`} />
      </Section>
      <Section id="matrix" title="Before and after" aside={result.matrix.title}><RiskMatrix result={result} weights={content.harmWeights} /></Section>
      {result.risks.slice(0, 3).map((risk) => (
        <Section key={risk.id} id={`tie-${risk.id}`} title={risk.title}><BowTie risk={risk} first={result.bestSet.controls} inPlaceFailure={inPlaceFailure} weights={content.harmWeights} /></Section>
      ))}
      <Section id="smoke" title="Smoke in the room" aside={`${result.smoke.lot.packs} packs, ${result.smoke.lot.volume} m³`}><SmokeCurve smoke={result.smoke.lot} thresholds={smokeThresholds(content)} caution={<SmokeCaution />} /></Section>
      <Section id="heat" title="Flames and heat"><HeatDistances heat={result.heat.lot} around={{ person: 1, combustible: 0.3, clearHeight: 0.5 }} /></Section>
      <Section id="effort-part" title="What to do first"><EffortCurve sets={sets} budget={budget} onBudget={setBudget} titleOf={titleOf} /></Section>
      <Section id="doubt" title="What would most reduce doubt"><Tornado doubts={result.doubt} totalHarm={result.totalHarm} /></Section>
    </>
  );
}

function SmokeCaution() {
  const words = guidanceWords(guidance2.fields, {});
  return guidanceTogether(guidance2, ['smoke-figure']).map((text) => <GuidanceText key={text.id} guidance={fillGuidance(text, words)} />);
}
