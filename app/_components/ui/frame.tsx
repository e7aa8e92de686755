import Link from 'next/link';
import { Brand } from './brand';
import { Icon } from './icon';
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
      <header className="top">
        <Brand />
        <Link className="alarm-link" href="/emergency" prefetch={false}><Icon name="bang" />Emergency / incident</Link>
      </header>
      <div className="side"><div className="side-in"><Places here={here} /></div></div>
      <Sheet {...sheet} />
    </div>
  );
}
