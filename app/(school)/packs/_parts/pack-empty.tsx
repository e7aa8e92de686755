import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';

/** What stands where no pack is: the next step. */
export function PackEmpty({ mayAdd }: { readonly mayAdd: boolean }) {
  if (!mayAdd) return <Empty level={2} title="Nothing here yet"><p>An organiser enters the packs.</p></Empty>;
  return (
    <Empty level={2} title="Enter your packs once">
      <p>Add one and copy it for the others of its kind, or read a table from a spreadsheet.</p>
      <div className="act-row"><ButtonLink kind="main" href="/packs/new">Add a pack</ButtonLink><ButtonLink href="/packs/import">Read a table</ButtonLink></div>
    </Empty>
  );
}
