'use client';

import { useState } from 'react';
import { EffortCurve } from '@/app/_components/charts/effort-curve';
import { Button } from '@/app/_components/ui/button';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { bestWithin } from '@/lib/charts/effort-curve';
import type { ActionResult, BestSet, ScoreResult } from '@/lib/core/result';
import { useContent } from '../_state/content-context';
import type { EditPlan } from '../_state/edit-plan';
import { ActionRows } from './action-rows';

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
  // The set at the document's own budget is the one the command prints, with the range of all draws.
  const known = sets.length === 0 ? [result.bestSet] : sets.map((set) => (set.budget === own ? result.bestSet : set));
  const most = Math.max(...known.map((set) => set.budget));
  const budget = Math.min(asked, most);
  const chosen = bestWithin(known, budget) ?? result.bestSet;
  const actionOf = (id: string): ActionResult | undefined => result.actions.find((action) => action.control === id);
  const settling = result.actions.filter((action) => action.clearsStops.length > 0);
  const best = chosen.controls.flatMap((id) => actionOf(id) ?? []);
  const others = result.actions.filter((action) => !best.includes(action));
  const titleOf = (id: string): string => content.controls.find((control) => control.id === id)?.title ?? id;
  if (result.actions.length === 0) return <Section id="first" title="What to do first"><p>Nothing is left to put in place.</p></Section>;
  return (
    <Section id="first" title="What to do first" aside="best set for your effort, worked out exactly">
      {settling.length === 0 ? null : (<><h3>First what settles a stop</h3><ActionRows actions={settling} plan={plan} /></>)}
      <h3 className="after">Then what takes most harm away for the effort</h3>
      <EffortCurve sets={known} budget={budget} onBudget={setAsked} titleOf={titleOf} />
      {complete ? null : <p className="small muted" role="status">Larger amounts are still being searched.</p>}
      <ActionRows actions={best} plan={plan} />
      <div className="actions">
        <Button kind="main" onClick={() => plan.all(chosen.controls)} unavailable={best.every((action) => plan.has(action.control)) ? 'All of these are planned.' : undefined}>Plan {best.length === 1 ? 'this one' : `these ${best.length}`}</Button>
        {budget === own ? null : <Button onClick={() => plan.budget(budget)}>Keep {budget} points in the document</Button>}
      </div>
      <p className="small muted after">What an action takes away counts only what it does by itself; moving the table or the store changes distances too, so the true gain can be larger. By this model, our judgement.</p>
      {others.length === 0 ? null : <Disclosure summary={`The other ${others.length} one could do`}><ActionRows actions={others} plan={plan} /></Disclosure>}
    </Section>
  );
}
