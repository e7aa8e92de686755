import { Button } from '@/app/_components/ui/button';
import { Field } from '@/app/_components/ui/field';
import { KINDS } from '@/lib/incidents/choices';
import type { IncidentQuery } from '@/lib/incidents/incident-list';
import { INCIDENT_STATES, incidentStateWords } from '@/lib/incidents/standing';

/** Finds by words, state and kind; all of it stands in the address. */
export function IncidentFilters({ query }: { readonly query: IncidentQuery }) {
  return (
    <form role="search" className="finder incident-tools" action="/incidents">
      <Field id="q" label="Find">{(attributes) => <input {...attributes} className="input" type="search" name="q" defaultValue={query.q} placeholder="label, place, words" />}</Field>
      <Field id="state" label="State">
        {(attributes) => (
          <select {...attributes} className="select" name="state" defaultValue={query.state}>
            <option value="">Any</option>
            <option value="open">Not closed</option>
            {INCIDENT_STATES.map((state) => <option key={state} value={state}>{incidentStateWords(state)}</option>)}
          </select>
        )}
      </Field>
      <Field id="kind" label="What it was">
        {(attributes) => (
          <select {...attributes} className="select" name="kind" defaultValue={query.kind}>
            <option value="">Anything</option>
            {KINDS.map(({ id, label }) => <option key={id} value={id}>{label}</option>)}
          </select>
        )}
      </Field>
      <Button type="submit">Find</Button>
    </form>
  );
}
