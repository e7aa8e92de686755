import { Notice } from '@/app/_components/ui/notice';
import { faultInWords } from '@/lib/interchange/json/fault';
import type { ScoreState } from '../_score/score-desk';

/** What keeps the room from being worked out, in words. */
export function ScoreTrouble({ score }: { readonly score: ScoreState }) {
  if (score.stage === 'failed') {
    return <Notice kind="act" level={2} title="It could not be worked out"><p>The fault is ours: {score.words}. Your answers are kept. Reload the page to try again, or undo the last change.</p></Notice>;
  }
  if (score.stage !== 'refused') return null;
  return (
    <Notice kind="act" level={2} title="The document cannot be worked out as it is">
      <ul>{score.faults.map((fault) => <li key={faultInWords(fault)}>{faultInWords(fault)}</li>)}</ul>
    </Notice>
  );
}
