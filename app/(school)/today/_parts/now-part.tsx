import { ButtonLink } from '@/app/_components/ui/button';
import type { TodayItem } from '@/lib/today/item';

/** What presses, the first with the one button in ember. */
export function NowPart({ items }: { readonly items: readonly TodayItem[] }) {
  if (items.length === 0) return null;
  return (
    <ol className="stops" aria-label="Now">
      {items.map(({ id, title, why, href, verb }, index) => (
        <li key={id}>
          <h2>{title}</h2>
          <p>{why}</p>
          <div className="row"><ButtonLink kind={index === 0 ? 'now' : 'outline'} href={href}>{verb}<span className="vh">: {title}</span></ButtonLink></div>
        </li>
      ))}
    </ol>
  );
}
