import type { ReactNode } from 'react';
import { QuietLine } from './quiet-line';

export interface SheetProps {
  /** notes on the sand beside the sheet; on a phone they follow it */
  readonly margin?: ReactNode;
  /** what the margin is about, for those who hear it */
  readonly marginLabel?: string;
  /** the sheet takes the room of the margin too; for tables and comparisons, never for running text */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** A sheet of paper lying on sand, notes to its right, the caution at the foot. Stands inside a frame with places. */
export function Sheet({ margin, marginLabel = 'Notes', wide = false, children }: SheetProps) {
  return (
    <div className={wide ? 'work wide' : 'work'}>
      <main className="sheet" id="main" tabIndex={-1}>{children}</main>
      {margin === undefined ? null : <aside className="margin" aria-label={marginLabel}>{margin}</aside>}
      <QuietLine />
    </div>
  );
}
