import { Finder, FinderChoice } from '@/app/_components/ui/finder';
import type { ActionQuery } from '@/lib/assessments/action-input';
import { SHOWN_ACTIONS } from '@/lib/assessments/actions';

const NAMES: Readonly<Record<ActionQuery['state'], string>> = { open: 'open', overdue: 'overdue', done: 'done', dropped: 'dropped', all: 'all of them' };

/** Finds by words and by state. */
export function ActionSearch({ query }: { readonly query: ActionQuery }) {
  return (
    <Finder action="/actions" name="q" words={query.q}>
      <FinderChoice id="state" label="Show" value={query.state} options={SHOWN_ACTIONS.map((state) => ({ value: state, label: NAMES[state] }))} />
    </Finder>
  );
}
