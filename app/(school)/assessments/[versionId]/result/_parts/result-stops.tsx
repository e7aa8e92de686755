import { ButtonLink } from '@/app/_components/ui/button';
import type { QuestionAddress } from '@/app/_components/result/document-parts';
import { StopsPart } from '@/app/_components/result/stops-part';
import type { StopResult } from '@/lib/core/result';
import type { ResultView } from '@/lib/server/signing/result-view';
import { calendarDayWords } from '@/lib/wording/dates';

/** Stop conditions with what was decided and agreed about each. */
export function ResultStops({ view, addressOf }: { readonly view: ResultView; readonly addressOf: QuestionAddress }) {
  const { scored: { content, result } } = view;
  return <StopsPart content={content} stops={result.stops} addressOf={addressOf} noteOf={(stop) => <Decided view={view} stop={stop} />} actionOf={(stop) => <StopAction view={view} stop={stop} />} />;
}

interface OfStop { readonly view: ResultView; readonly stop: StopResult }

function Decided({ view: { acceptances, openStops, school }, stop }: OfStop) {
  const accepted = openStops.includes(stop.id) ? undefined : acceptances.find((one) => one.stopId === stop.id);
  if (accepted === undefined) return null;
  return <p className="accepted"><b>Accepted in writing by {accepted.byName} until {calendarDayWords(accepted.endsOn, school)}.</b> {accepted.reason} {accepted.replacement === '' ? null : <>Instead: {accepted.replacement}</>}{accepted.paper === null ? null : <> Paper: {accepted.paper}.</>}</p>;
}

function StopAction({ view, stop }: OfStop) {
  const { version, actions, may, scored: { content }, openStops, school } = view;
  const open = actions.find((action) => action.stopId === stop.id && action.state === 'open');
  const acceptable = content.stops.find((one) => one.id === stop.id)?.acceptable;
  const mayAccept = may.judge && openStops.includes(stop.id) && acceptable !== undefined && acceptable.kind !== 'never';
  return (
    <>
      {open === undefined ? null : <a href={`/actions/${open.id}`} className="small">{open.ownerName} does it by {calendarDayWords(open.dueOn, school)}</a>}
      {open !== undefined || !may.addAction ? null : <ButtonLink size="small" href={`/assessments/${version.id}/actions/new?stop=${stop.id}`}>Make it an action<span className="vh">: {stop.title}</span></ButtonLink>}
      {mayAccept ? <ButtonLink size="small" href={`/assessments/${version.id}/review#accept-${stop.id}`}>Accept in writing<span className="vh">: {stop.title}</span></ButtonLink> : null}
    </>
  );
}
