import { Finder, FinderChoice } from '@/app/_components/ui/finder';
import { type AssessmentQuery, SHOWN_STATES, type ShownState } from '@/lib/assessments/list';
import { assessmentStateWords } from '@/lib/wording/assessment-states';

const words = (state: ShownState): string => (state === 'current' ? 'All but superseded and withdrawn' : state === 'all' ? 'All' : assessmentStateWords(state));
const STATES = SHOWN_STATES.map((state) => ({ value: state, label: words(state) }));

/** Finds by words and state. */
export function ListSearch({ query }: { readonly query: AssessmentQuery }) {
  return (
    <Finder action="/assessments" name="q" words={query.q} placeholder="title, place, season, preparer">
      <FinderChoice id="state" label="State" value={query.state} options={STATES} />
    </Finder>
  );
}
