import { Finder, FinderChoice } from '@/app/_components/ui/finder';
import { KINDS } from '@/lib/incidents/choices';
import type { IncidentQuery } from '@/lib/incidents/incident-list';
import { INCIDENT_STATES, incidentStateWords } from '@/lib/incidents/standing';

const STATES = [{ value: '', label: 'Any' }, { value: 'open', label: 'Not closed' }, ...INCIDENT_STATES.map((state) => ({ value: state, label: incidentStateWords(state) }))];
const WHATS = [{ value: '', label: 'Anything' }, ...KINDS.map(({ id, label }) => ({ value: id, label }))];

/** Finds by words, state and kind. */
export function IncidentFilters({ query }: { readonly query: IncidentQuery }) {
  return (
    <Finder action="/incidents" name="q" words={query.q} placeholder="label, place, words">
      <FinderChoice id="state" label="State" value={query.state} options={STATES} />
      <FinderChoice id="kind" label="What it was" value={query.kind} options={WHATS} />
    </Finder>
  );
}
