import { Finder, FinderChoice } from '@/app/_components/ui/finder';
import type { EventQuery } from '@/lib/events/event-list';
import { EVENT_STATES, eventStateWords } from '@/lib/events/standing';

const STATES = [{ value: '', label: 'Any' }, ...EVENT_STATES.map((state) => ({ value: state, label: eventStateWords(state) }))];
const TIMES = [{ value: '', label: 'Any time' }, { value: 'coming', label: 'Coming up' }, { value: 'past', label: 'Past' }];

/** Finds by words, state and time. */
export function EventFilters({ query }: { readonly query: EventQuery }) {
  return (
    <Finder action="/events" name="q" words={query.q} placeholder="name, place, person">
      <FinderChoice id="state" label="State" value={query.state} options={STATES} />
      <FinderChoice id="when" label="When" value={query.when} options={TIMES} />
    </Finder>
  );
}
