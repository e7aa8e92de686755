import type { ReactNode } from 'react';
import { Icon } from '@/app/_components/ui/icon';

interface VerdictNoticeProps { readonly tone: 'good' | 'doubt' | 'stop'; readonly heading: string; readonly children: ReactNode }

const LOOKS = { good: { kind: 'done', icon: 'check' }, doubt: { kind: 'unsure', icon: 'minus' }, stop: { kind: 'now', icon: 'bang' } } as const;

/** A verdict with word, shape and colour, so that none is taken for another. */
export function VerdictNotice({ tone, heading, children }: VerdictNoticeProps) {
  const { kind, icon } = LOOKS[tone];
  return (
    <div className={`notice verdict ${kind}`}>
      <h2><Icon name={icon} />{heading}</h2>
      {children}
    </div>
  );
}
