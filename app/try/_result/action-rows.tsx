'use client';

import { useId } from 'react';
import type { Content } from '@/lib/content/model';
import type { ActionResult } from '@/lib/core/result';
import { rangeWords } from '@/lib/wording/frequency';
import { hours } from '@/lib/wording/measures';
import { percent, rounded } from '@/lib/wording/numbers';
import { stateWord } from '@/lib/wording/states';
import { useContent } from '../_state/content-context';
import type { EditPlan } from '../_state/edit-plan';

interface ActionRowsProps { readonly actions: readonly ActionResult[]; readonly plan: EditPlan }

/** Actions with what each takes away, to be ticked as planned. */
export function ActionRows({ actions, plan }: ActionRowsProps) {
  return <ul className="rows act-rows">{actions.map((action) => <ActionRow key={action.control} action={action} plan={plan} />)}</ul>;
}

interface ActionRowProps { readonly action: ActionResult; readonly plan: EditPlan }

function ActionRow({ action, plan }: ActionRowProps) {
  const content = useContent();
  const details = useId();
  return (
    <li>
      <label className="check">
        <input type="checkbox" checked={plan.has(action.control)} aria-describedby={details} onChange={(event) => plan.set(action.control, event.currentTarget.checked)} />
        <b>{action.title}</b>
      </label>
      <div className="small muted" id={details}>
        <p>{action.goodLooksLike}</p>
        <p>
          {stateWord(action.state)} now; {costWords(content, action)}; alone it takes away {percent(action.share)} of the harm ({rangeWords(action.interval.p05, action.interval.p95)} points a season)
          {action.clearsStops.length === 0 ? '' : <b>; settles: {action.clearsStops.map((id) => stopTitle(content, id)).join(', ')}</b>}
        </p>
      </div>
    </li>
  );
}

function costWords(content: Content, action: ActionResult): string {
  const band = content.moneyBands.find((one) => one.band === action.moneyBand);
  const money = band === undefined || band.points === 0 ? 'no money' : band.title;
  return `${hours(action.hours)}, ${money} (${rounded(action.effort)} points)`;
}

const stopTitle = (content: Content, id: string): string => content.stops.find((stop) => stop.id === id)?.title.toLowerCase() ?? id;
