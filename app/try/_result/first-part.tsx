'use client';

import { useState } from 'react';
import { EffortCurve } from '@/app/_components/charts/effort-curve';
import { Button } from '@/app/_components/ui/button';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { bestWithin } from '@/lib/charts/effort-curve';
import type { BestSet, ScoreResult } from '@/lib/core/result';
import { useContent } from '../_state/use-content';
import type { EditPlan } from '../_state/edit-plan';
import { ActionRows } from './action-rows';
import { knownSets, stepTo } from './known-sets';
import { NothingCheap } from './nothing-cheap';
import { sortedActions } from '@/app/_components/result/sorted-actions';

interface FirstPartProps {
  readonly result: ScoreResult;
  readonly sets: readonly BestSet[];
  readonly complete: boolean;
  readonly plan: EditPlan;
}

/** What to do first: what settles stops, then the best set for the effort one can give. */
export function FirstPart({ result, sets, complete, plan }: FirstPartProps) {
  const content = useContent();
  const own = result.bestSet.budget;
  const [asked, setAsked] = useState(own);
  const known = knownSets(sets, result.bestSet);
  const nothing = known.every((set) => set.controls.length === 0);
  const chosen = bestWithin(known, asked) ?? result.bestSet;
  const { budget } = chosen;
  const { settling, best, others } = sortedActions(result.actions, chosen);
  const titleOf = (id: string): string => content.controls.find((control) => control.id === id)?.title ?? id;
  const above = settling.filter((action) => chosen.controls.includes(action.control)).map((action) => action.title);
  if (result.actions.length === 0) return <Section id="first" title="What to do first"><p>Nothing is left to put in place.</p></Section>;
  return (
    <Section id="first" title="What to do first" aside="the best set is exact; all percentages are by this model, our judgement">
      {settling.length === 0 ? null : (<><h3>First what settles a stop</h3><ActionRows actions={settling} plan={plan} /></>)}
      <h3>{settling.length === 0 ? 'What takes most harm away for the effort' : 'Then what takes most harm away for the effort'}</h3>
      {nothing
        ? <NothingCheap actions={result.actions} most={Math.max(...known.map((set) => set.budget))} />
        : <EffortCurve sets={known} budget={budget} onBudget={(next) => setAsked(stepTo(known, budget, next))} titleOf={titleOf} />}
      {complete ? null : <p className="small muted" role="status">Other amounts are being searched.</p>}
      {above.length === 0 ? null : <p className="after">From above: {above.join('; ')}.{best.length === 0 ? '' : ' And:'}</p>}
      <ActionRows actions={best} plan={plan} />
      {nothing || chosen.controls.length > 0 ? null : <p className="after">Nothing to plan for this effort: what is left costs more, or takes nothing away.</p>}
      <div className="actions">
        {chosen.controls.length === 0 ? null : <Button kind="main" onClick={() => plan.all(chosen.controls)} unavailable={chosen.controls.every((control) => plan.has(control)) ? 'All of these are planned.' : undefined}>Plan {chosen.controls.length === 1 ? 'this one' : `these ${chosen.controls.length}`}</Button>}
        {budget === own ? null : <Button onClick={() => plan.budget(budget)}>Keep {budget} points in the document</Button>}
      </div>
      <p className="small muted after">{content.controls.some((control) => control.moves !== undefined) ? 'An action counts with the distances and rooms it changes.' : 'Only what the action does by itself is counted. Moving the table or the store changes distances too, so the true gain can be larger.'}</p>
      {others.length === 0 ? null : <Disclosure summary={others.length === 1 ? 'One more thing that could be done' : `${others.length} more things that could be done`}><ActionRows actions={others} plan={plan} /></Disclosure>}
    </Section>
  );
}
