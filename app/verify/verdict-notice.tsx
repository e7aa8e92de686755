import type { ReactNode, Ref } from 'react';
import { Icon } from '@/app/_components/ui/icon';

interface VerdictNoticeProps {
  readonly tone: 'good' | 'doubt' | 'stop';
  readonly heading: string;
  readonly headingRef?: Ref<HTMLHeadingElement>;
  /** what was checked, and when */
  readonly about: string;
  readonly children: ReactNode;
}

const ICONS = { good: 'check', doubt: 'minus', stop: 'bang' } as const;

/** A verdict with word, shape and colour, so that none is taken for another: an ink bar, sand, or ember. */
export function VerdictNotice({ tone, heading, headingRef, about, children }: VerdictNoticeProps) {
  return (
    <div className={`file-verdict ${tone}`}>
      <p className="small muted wrap-anywhere">{about}</p>
      <h2 ref={headingRef} tabIndex={-1}><Icon name={ICONS[tone]} />{heading}</h2>
      {children}
    </div>
  );
}
