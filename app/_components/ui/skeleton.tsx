import type { CSSProperties } from 'react';

const WIDTHS = ['100%', '82%', '94%', '60%'];

interface SkeletonProps {
  /** what is being waited for, and that one may leave */
  readonly words: string;
  readonly lines?: number;
}

/** Waiting, on sand: what comes is not known yet. */
export function Skeleton({ words, lines = 4 }: SkeletonProps) {
  return (
    <div className="skel" role="status">
      {Array.from({ length: lines }, (_, line) => <i key={line} aria-hidden="true" style={{ '--w': WIDTHS[line % WIDTHS.length] } as CSSProperties} />)}
      <p className="small muted">{words}</p>
    </div>
  );
}
