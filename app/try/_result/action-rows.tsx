'use client';

import { useId } from 'react';
import { costWords, settledWords } from '@/app/_components/result/action-words';
import { Check } from '@/app/_components/ui/check';
import type { ActionResult } from '@/lib/core/result';
import { rangeWords } from '@/lib/wording/frequency';
import { percent } from '@/lib/wording/numbers';
import { stateWord } from '@/lib/wording/states';
import { useContent } from '../_state/use-content';
import type { EditPlan } from '../_state/edit-plan';

interface ActionRowsProps { readonly actions: readonly ActionResult[]; readonly plan: EditPlan }

/** Actions with what each costs and takes away, to be ticked as planned. */
export function ActionRows({ actions, plan }: ActionRowsProps) {
  return <ul className="rows act-rows">{actions.map((action) => <ActionRow key={action.control} action={action} plan={plan} />)}</ul>;
}

interface ActionRowProps { readonly action: ActionResult; readonly plan: EditPlan }

function ActionRow({ action, plan }: ActionRowProps) {
  const content = useContent();
  const gain = useId();
  return (
    <li>
      <Check checked={plan.has(action.control)} describedBy={gain} onChange={(planned) => plan.set(action.control, planned)}><b>{action.title}</b></Check>
      <div className="small muted">
        <p id={gain}>
          {costWords(content, action)}. By itself it takes away {percent(action.share)} of the harm ({rangeWords(action.interval.p05, action.interval.p95)} points a season).
          {action.clearsStops.length === 0 ? null : <b> Settles: {settledWords(content, action)}.</b>}
        </p>
        <details className="alt">
          <summary>What good looks like</summary>
          <p>{action.goodLooksLike} Now: {stateWord(action.state)}.</p>
        </details>
      </div>
    </li>
  );
}
