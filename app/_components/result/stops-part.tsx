import { memo, type ReactNode } from 'react';
import { StopList } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import type { Content } from '@/lib/content/model';
import type { StopResult } from '@/lib/core/result';
import { acceptanceWords } from '@/lib/wording/acceptance';
import { questionsOfStop } from './question-of-stop';
import type { QuestionAddress } from './document-parts';
import { guidanceOfStop } from './guidance-of-stop';

interface StopsPartProps {
  readonly content: Content;
  readonly stops: readonly StopResult[];
  readonly addressOf: QuestionAddress;
  /** what a page can do about a stop, beside the links to its answer and its guidance */
  readonly actionOf?: (stop: StopResult) => ReactNode;
  /** what was decided about a stop */
  readonly noteOf?: (stop: StopResult) => ReactNode;
}

/** What forbids starting. Apart from the ranking: no grade outweighs it. */
export const StopsPart = memo(function StopsPart({ content, stops, addressOf, actionOf, noteOf }: StopsPartProps) {
  const all = content.stops.length;
  return (
    <Section id="stops" title="Stop conditions" aside={`${all - stops.length} of ${all} clear`}>
      <p className="small muted">A grade says how we rank what is left. A stop says do not start, whatever the grade.</p>
      {stops.length === 0
        ? <p className="after">None holds. That permits nothing by itself: your officer and local rules decide.</p>
        : <div className="after"><StopList stops={stops.map((stop) => ({ id: stop.id, title: stop.title, why: `${stop.why} What settles it: ${lowerFirst(stop.settledBy)}`, note: <>{noteOf?.(stop)}<Acceptance content={content} stop={stop.id} /></>, action: <>{actionOf?.(stop)}<StopLinks content={content} stop={stop.id} addressOf={addressOf} /></> }))} /></div>}
    </Section>
  );
});

interface OfStop { readonly content: Content; readonly stop: string }

const definitionOf = ({ content, stop }: OfStop) => content.stops.find((one) => one.id === stop);

function Acceptance(of: OfStop) {
  const acceptance = acceptanceWords(definitionOf(of)?.acceptable);
  return acceptance === null ? null : <p className="small"><b>{acceptance.lead}</b> {acceptance.words}</p>;
}

/** To the answer it rests on, and to what to do about it, on a page of its own. */
function StopLinks({ addressOf, ...of }: OfStop & { readonly addressOf: QuestionAddress }) {
  const definition = definitionOf(of);
  const question = definition === undefined ? undefined : questionsOfStop(of.content, definition)[0];
  const guidance = guidanceOfStop(of.content, of.stop);
  return (
    <>
      {question === undefined ? null : <a href={addressOf(question.id)} className="small">Go to the answer<span className="vh">: {question.text}</span></a>}
      {guidance === undefined ? null : <a href={`/method/guidance/${guidance.id}`} className="small">Read: {guidance.title}</a>}
    </>
  );
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
