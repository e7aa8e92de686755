'use client';

import { Button } from '@/app/_components/ui/button';
import type { Verdict } from '@/lib/wording/verdict';

interface ScoreStripProps {
  readonly verdict: Verdict | null;
  readonly busy: boolean;
  /** what can be taken back, or null */
  readonly undo: string | null;
  readonly onUndo: () => void;
  readonly onStartAgain: () => void;
}

/** Stays in view while answers are changed: the verdict as it stands, and the way back. */
export function ScoreStrip({ verdict, busy, undo, onUndo, onStartAgain }: ScoreStripProps) {
  return (
    <div className={verdict?.presses === true ? 'strip no-print presses' : 'strip no-print'} role="region" aria-label="Verdict as it stands">
      <p className="strip-words" role="status">{verdict === null ? 'Working it out.' : verdict.sentence}{busy && verdict !== null ? ' Working out the rest.' : ''}</p>
      <div className="strip-ways">
        {undo === null ? null : <Button size="small" onClick={onUndo}>Undo<span className="vh"> {undo}</span></Button>}
        <Button size="small" kind="plain" onClick={onStartAgain}>Start again</Button>
      </div>
    </div>
  );
}
