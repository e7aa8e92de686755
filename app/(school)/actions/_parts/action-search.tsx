import { Finder, FinderChoice } from '@/app/_components/ui/finder';
import type { ActionQuery } from '@/lib/assessments/action-input';
import { SHOWN_ACTIONS } from '@/lib/assessments/actions';

const STATES = SHOWN_ACTIONS.map((state) => ({ value: state, label: state === 'all' ? 'all of them' : state }));

/** Finds by words and state. */
export function ActionSearch({ query }: { readonly query: ActionQuery }) {
  return (
    <Finder action="/actions" name="q" words={query.q} placeholder="what, who">
      <FinderChoice id="state" label="State" value={query.state} options={STATES} />
    </Finder>
  );
}
