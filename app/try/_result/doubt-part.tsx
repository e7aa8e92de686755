'use client';

import { memo } from 'react';
import { Tornado } from '@/app/_components/charts/tornado';
import { Section } from '@/app/_components/ui/section';
import type { ScoreResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';
import { useContent } from '../_state/use-content';
import { AnswerName } from './answer-name';

/** How many things to go and check are named: a list that gets done. */
const MOST = 5;

/** What would most reduce doubt: what a person can go and look up first, then our own figures. */
export const DoubtPart = memo(function DoubtPart({ result }: { readonly result: ScoreResult }) {
  const content = useContent();
  const checks = result.doubt.filter((doubt) => doubt.canBeChecked).slice(0, MOST);
  return (
    <Section id="doubt" title="What would most reduce doubt" aside="total harm, one thing moved at a time">
      {checks.length === 0 ? <p className="after">Nothing is left for you to look up: every figure of this room was given. What is open are our own figures.</p> : (
        <>
          <h3>Go and check</h3>
          <ol className="rows checks">
            {checks.map((doubt) => (
              <li key={`${doubt.kind} ${doubt.id}`}>
                <span><AnswerName content={content} name={doubt.id} title={doubt.title} /></span>
                <span className="small muted">{doubt.between}: harm {rounded(doubt.harmLow)} to {rounded(doubt.harmHigh)} points a season</span>
              </li>
            ))}
          </ol>
        </>
      )}
      <Tornado doubts={result.doubt} totalHarm={result.totalHarm} />
    </Section>
  );
});
