'use client';

import { memo } from 'react';
import { StopList } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import type { StopResult } from '@/lib/core/result';
import { questionAnchor } from '../_answers/question-parts';
import { useContent } from '../_state/content-context';
import { questionsOfStop } from './question-of-stop';

/** What forbids starting. Apart from the ranking: no grade outweighs it. */
export const StopsPart = memo(function StopsPart({ stops }: { readonly stops: readonly StopResult[] }) {
  const all = useContent().stops.length;
  return (
    <Section id="stops" title="Stop conditions" aside={`${all - stops.length} of ${all} clear`}>
      {stops.length === 0
        ? <p>None holds. That permits nothing by itself: your officer and local rules decide.</p>
        : <StopList stops={stops.map((stop) => ({ id: stop.id, title: stop.title, why: `${stop.why} What settles it: ${lowerFirst(stop.settledBy)}`, action: <AnswerLink stop={stop.id} /> }))} />}
      <p className="small muted after">A grade says how we rank what is left. A stop says do not start, whatever the grade.</p>
    </Section>
  );
});

function AnswerLink({ stop }: { readonly stop: string }) {
  const content = useContent();
  const definition = content.stops.find((one) => one.id === stop);
  const question = definition === undefined ? undefined : questionsOfStop(content, definition)[0];
  if (question === undefined) return null;
  return <a href={`#${questionAnchor(question.id)}`} className="small">Go to the answer<span className="vh">: {question.text}</span></a>;
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
