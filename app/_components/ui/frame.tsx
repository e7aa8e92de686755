import { Brand } from './brand';
import { Places, type PlaceId } from './places';
import { Sheet, type SheetProps } from './sheet';

interface FrameProps extends SheetProps {
  /** the place this page belongs to */
  readonly here?: PlaceId;
}

/** The frame of pages that need no account: places to the left of the sheet. */
export function Frame({ here, ...sheet }: FrameProps) {
  return (
    <div className="frame">
      <header className="top"><Brand /></header>
      <div className="side"><div className="side-in"><Places here={here} /></div></div>
      <Sheet {...sheet} />
    </div>
  );
}
