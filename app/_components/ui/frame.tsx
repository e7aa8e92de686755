import type { ReactNode } from 'react';
import { Brand } from './brand';
import { Places, type PlaceId } from './places';
import { QuietLine } from './quiet-line';

interface FrameProps {
  /** the place this page belongs to */
  readonly here?: PlaceId;
  /** notes on the sand beside the sheet; on a phone they follow it */
  readonly margin?: ReactNode;
  /** what the margin is about, for those who hear it */
  readonly marginLabel?: string;
  /** the sheet takes the room of the margin too; for tables and comparisons, never for running text */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** A sheet of paper lying on sand: places to the left, notes to the right, the caution at the foot. */
export function Frame({ here, margin, marginLabel = 'Notes', wide = false, children }: FrameProps) {
  return (
    <div className="frame">
      <header className="top"><Brand /></header>
      <div className="side"><div className="side-in"><Places here={here} /></div></div>
      <div className={wide ? 'work wide' : 'work'}>
        <main className="sheet" id="main" tabIndex={-1}>{children}</main>
        {margin === undefined ? null : <aside className="margin" aria-label={marginLabel}>{margin}</aside>}
        <QuietLine />
      </div>
    </div>
  );
}
