import { Button } from '@/app/_components/ui/button';
import { Field } from '@/app/_components/ui/field';
import type { EventQuery } from '@/lib/events/event-list';
import { EVENT_STATES, eventStateWords } from '@/lib/events/standing';

/** Finds by words, state and time; all of it stands in the address. */
export function EventFilters({ query }: { readonly query: EventQuery }) {
  return (
    <form role="search" className="finder incident-tools" action="/events">
      <Field id="q" label="Find">{(attributes) => <input {...attributes} className="input" type="search" name="q" defaultValue={query.q} placeholder="name, place, person" />}</Field>
      <Field id="state" label="State">
        {(attributes) => (
          <select {...attributes} className="select" name="state" defaultValue={query.state}>
            <option value="">Any</option>
            {EVENT_STATES.map((state) => <option key={state} value={state}>{eventStateWords(state)}</option>)}
          </select>
        )}
      </Field>
      <Field id="when" label="When">
        {(attributes) => <select {...attributes} className="select" name="when" defaultValue={query.when}><option value="">Any time</option><option value="coming">Coming up</option><option value="past">Past</option></select>}
      </Field>
      <Button type="submit">Find</Button>
    </form>
  );
}
