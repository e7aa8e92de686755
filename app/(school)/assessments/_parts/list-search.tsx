import { Button, ButtonLink } from '@/app/_components/ui/button';
import { SelectField, TextField } from '@/app/_components/ui/text-field';
import { type ListQuery, SHOWN_STATES, type ShownState } from '@/lib/assessments/list';
import { assessmentStateWords } from '@/lib/wording/assessment-states';

const words = (state: ShownState): string => (state === 'current' ? 'All but superseded and withdrawn' : state === 'all' ? 'All' : assessmentStateWords(state));

/** Search and filter as a plain form: the address holds them, so that a list can be kept and passed on. */
export function ListSearch({ query }: { readonly query: ListQuery }) {
  return (
    <form className="list-search" role="search" action="/assessments">
      <TextField id="list-words" name="q" label="Words in title, place, season or preparer" defaultValue={query.q} maxLength={200} />
      <SelectField id="list-state" name="state" label="State" defaultValue={query.state} options={SHOWN_STATES.map((state) => ({ value: state, label: words(state) }))} />
      <p className="row">
        <Button type="submit">Show</Button>
        <ButtonLink kind="plain" href={`/assessments/list.csv?${new URLSearchParams(query).toString()}`} download="assessments.csv">As a table for a spreadsheet (CSV)</ButtonLink>
      </p>
    </form>
  );
}
