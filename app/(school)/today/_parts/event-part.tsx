import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import type { TodayView } from '@/lib/server/today/gather';

export function EventPart({ events }: Pick<TodayView, 'events'>) {
  return (
    <Section id="events" title="Coming up">
      <ul className="rows">
        {events.map(({ id, title, when, place, packs }) => <li key={id}><h3><Link href={`/events/${id}`} prefetch={false}>{title}</Link></h3><p className="small muted">{when}, {place}. {packs === 1 ? 'One pack' : `${packs} packs`} on its list.</p></li>)}
      </ul>
    </Section>
  );
}
