import { memo } from 'react';
import { Tornado } from '@/app/_components/charts/tornado';
import { Section } from '@/app/_components/ui/section';
import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';
import { AnswerName } from './answer-name';
import type { QuestionAddress } from './document-parts';

/** How many things to go and check are named: a list that gets done. */
const MOST = 5;

/** What would most reduce doubt: what a person can go and look up first, then our own figures. */
export const DoubtPart = memo(function DoubtPart({ content, result, addressOf }: { readonly content: Content; readonly result: ScoreResult; readonly addressOf: QuestionAddress }) {
  const checks = result.doubt.filter((doubt) => doubt.canBeChecked).slice(0, MOST);
  return (
    <Section id="doubt" title="What would most reduce doubt" aside="total harm, one thing moved at a time">
      {checks.length === 0 ? <p className="after">Nothing is left for you to look up: every figure of this room was given. What is open are our own figures.</p> : (
        <>
          <h3>Go and check</h3>
          <ol className="rows checks">
            {checks.map((doubt) => (
              <li key={`${doubt.kind} ${doubt.id}`}>
                <span><AnswerName content={content} addressOf={addressOf} name={doubt.id} title={doubt.title} /></span>
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
