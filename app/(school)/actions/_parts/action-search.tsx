import { Button } from '@/app/_components/ui/button';
import { Field } from '@/app/_components/ui/field';
import type { ActionQuery } from '@/lib/assessments/action-input';
import { SHOWN_ACTIONS } from '@/lib/assessments/actions';

const NAMES: Readonly<Record<ActionQuery['state'], string>> = { open: 'open', overdue: 'overdue', done: 'done', dropped: 'dropped', all: 'all of them' };

/** Finds by words and by state; both stand in the address. */
export function ActionSearch({ query }: { readonly query: ActionQuery }) {
  return (
    <form action="/actions" className="finder" role="search">
      <Field id="q" label="Find">{(attributes) => <input {...attributes} className="input" type="search" name="q" defaultValue={query.q} />}</Field>
      <Field id="state" label="Show">
        {(attributes) => <select {...attributes} className="select" name="state" defaultValue={query.state}>{SHOWN_ACTIONS.map((state) => <option key={state} value={state}>{NAMES[state]}</option>)}</select>}
      </Field>
      <Button type="submit">Find</Button>
    </form>
  );
}
