import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import type { TodayItem } from '@/lib/today/item';

/** What is to be seen to, and does not press. */
export function SoonPart({ items, isAll }: { readonly items: readonly TodayItem[]; /** nothing stands above it */ readonly isAll: boolean }) {
  if (items.length === 0) return isAll ? <p>Nothing waits for you either. Before packs are next charged, make the opening check.</p> : null;
  return (
    <Section id="soon" title={isAll ? 'To be seen to' : 'After that'}>
      <ul className="rows">
        {items.map(({ id, title, why, href }) => <li key={id}><h3><Link href={href} prefetch={false}>{title}</Link></h3><p className="small muted">{why}</p></li>)}
      </ul>
    </Section>
  );
}
