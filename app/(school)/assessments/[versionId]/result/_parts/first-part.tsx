import Link from 'next/link';
import { costWords, settledWords } from '@/app/_components/result/action-words';
import { sortedActions } from '@/app/_components/result/sorted-actions';
import { ButtonLink } from '@/app/_components/ui/button';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { ActionResult } from '@/lib/core/result';
import type { ResultView } from '@/lib/server/signing/result-view';
import { rangeWords } from '@/lib/wording/frequency';
import { percent, percentRange, rounded } from '@/lib/wording/numbers';
import { stateWord } from '@/lib/wording/states';

/** What to do first: what settles stops, then the best set for the effort that can be given; each can be made an action. */
export function FirstPart({ view }: { readonly view: ResultView }) {
  const { result } = view.scored;
  const { bestSet } = result;
  const { settling, best, others } = sortedActions(result.actions, bestSet);
  if (result.actions.length === 0) return <Section id="first" title="What to do first"><p>Nothing is left to put in place.</p></Section>;
  return (
    <Section id="first" title="What to do first" aside="the best set is exact; all percentages are by this model, our judgement">
      {settling.length === 0 ? null : <><h3>First what settles a stop</h3><Rows view={view} actions={settling} /></>}
      <h3>{settling.length === 0 ? 'What takes most harm away for the effort' : 'Then what takes most harm away for the effort'}</h3>
      {bestSet.controls.length === 0
        ? <p className="after">Within {rounded(bestSet.budget)} points of effort nothing that is left takes harm away.</p>
        : <p className="cut"><span className="fig-n"><b>{rounded(bestSet.effort)}</b> points</span> of effort take away <span className="fig-n"><b>{percent(bestSet.cut)}</b></span> of the harm <span className="muted">({percentRange(bestSet.cutInterval.p05, bestSet.cutInterval.p95)}), by this model, which is our judgement. A point is an hour of work; money counts as points too.</span></p>}
      {best.length === 0 ? null : <Rows view={view} actions={best} />}
      {others.length === 0 ? null : <Disclosure summary={others.length === 1 ? 'One more thing that could be done' : `${others.length} more things that could be done`}><Rows view={view} actions={others} /></Disclosure>}
    </Section>
  );
}

function Rows({ view, actions }: { readonly view: ResultView; readonly actions: readonly ActionResult[] }) {
  return <ul className="rows suggestions">{actions.map((action) => <Row key={action.control} view={view} action={action} />)}</ul>;
}

function Row({ view: { version, scored: { content }, actions, may }, action }: { readonly view: ResultView; readonly action: ActionResult }) {
  const agreed = actions.find((one) => one.controlId === action.control && one.state === 'open');
  const settles = settledWords(content, action);
  return (
    <li>
      <b>{action.title}</b>
      <p className="small muted">{costWords(content, action)}. By itself it takes away {percent(action.share)} of the harm ({rangeWords(action.interval.p05, action.interval.p95)} points a season).{settles === '' ? null : <b> Settles: {settles}.</b>}</p>
      <p className="small">{action.goodLooksLike} <span className="muted">Now: {stateWord(action.state)}.</span></p>
      {agreed === undefined ? null : <p className="small"><Link href={`/actions/${agreed.id}`} prefetch={false}>Agreed: {agreed.ownerName} does it</Link></p>}
      {agreed !== undefined || !may.addAction ? null : <p className="row"><ButtonLink size="small" href={`/assessments/${version.id}/actions/new?control=${action.control}`}>Make it an action<span className="vh">: {action.title}</span></ButtonLink></p>}
    </li>
  );
}
