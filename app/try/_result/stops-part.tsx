'use client';

import { memo } from 'react';
import { StopList } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import type { Content } from '@/lib/content/model';
import type { StopResult } from '@/lib/core/result';
import { acceptanceWords } from '@/lib/wording/acceptance';
import { questionAnchor } from '../_answers/question-parts';
import { useContent } from '../_state/use-content';
import { questionsOfStop } from './question-of-stop';
import { guidanceOfStop } from './guidance-of-stop';

/** What forbids starting. Apart from the ranking: no grade outweighs it. */
export const StopsPart = memo(function StopsPart({ stops }: { readonly stops: readonly StopResult[] }) {
  const content = useContent();
  const all = content.stops.length;
  return (
    <Section id="stops" title="Stop conditions" aside={`${all - stops.length} of ${all} clear`}>
      <p className="small muted">A grade says how we rank what is left. A stop says do not start, whatever the grade.</p>
      {stops.length === 0
        ? <p className="after">None holds. That permits nothing by itself: your officer and local rules decide.</p>
        : <div className="after"><StopList stops={stops.map((stop) => ({ id: stop.id, title: stop.title, why: `${stop.why} What settles it: ${lowerFirst(stop.settledBy)}`, note: <Acceptance content={content} stop={stop.id} />, action: <StopLinks content={content} stop={stop.id} /> }))} /></div>}
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
function StopLinks(of: OfStop) {
  const definition = definitionOf(of);
  const question = definition === undefined ? undefined : questionsOfStop(of.content, definition)[0];
  const guidance = guidanceOfStop(of.content, of.stop);
  return (
    <>
      {question === undefined ? null : <a href={`#${questionAnchor(question.id)}`} className="small">Go to the answer<span className="vh">: {question.text}</span></a>}
      {guidance === undefined ? null : <a href={`/method/guidance/${guidance.id}`} className="small">Read: {guidance.title}</a>}
    </>
  );
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
